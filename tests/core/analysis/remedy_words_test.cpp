#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <set>

#include "core/analysis/analysis.h"
#include "core/analysis/checks.h"
#include "core/analysis/field_value.h"
#include "core/files/rig_file.h"

/// A remedy names what somebody can do: set a setting, choose a size, or take another part.
namespace gazewright {
namespace {

std::string said(const char* path, double value_si, Change change) {
  return say_change(path, *find_info(path), value_si, change);
}

TEST(RemedyWords, APropertyOfABoughtPartIsAMatterOfAnotherPart) {
  EXPECT_EQ(said("pan.gearbox.peak_torque", 12, Change::or_more),
            "another gearbox for pan (peak torque 12 N·m or more)");
  EXPECT_EQ(said("tilt.motor.thermal_resistance", 2, Change::or_less),
            "another motor for tilt, or better cooling (thermal resistance 2 K/W or less)");
  EXPECT_EQ(said("supply.source_resistance", 0.01, Change::or_less),
            "another supply (source resistance 10 mΩ or less)");
  EXPECT_EQ(said("pan.motor.peak_current", 30, Change::to),
            "another motor for pan (peak current 30 A)");
}

TEST(RemedyWords, ASettingAndASizeAreSaidAsTheyAre) {
  EXPECT_EQ(said("pan.gearbox.ratio", 14, Change::or_less), "pan gearbox ratio 14 or less");
  EXPECT_EQ(said("tilt.loop.position_gain", 40, Change::or_more),
            "tilt loop position gain 40 1/s or more");
  // Too small a stated error is mended by stating it, too large a one by another encoder.
  EXPECT_EQ(said("pan.encoder.error", 0, Change::or_more), "pan encoder error 0° or more");
  EXPECT_TRUE(is_bought("pan.encoder.error", Change::or_less));
}

/// Of what motor, gearbox, encoder and bearings are bought with, nothing but this can be chosen or
/// set with the part that is there.
TEST(RemedyWords, NoLeverTurnsADataSheetValueOfThePartThatIsThere) {
  const std::set<std::string> settable{
      "pan.gearbox.ratio",          "pan.gearbox.load_at",    "pan.motor.winding_limit",
      "pan.motor.housing_to_mount", "pan.encoder.magnet_gap", "pan.encoder.magnet_offset",
      "pan.encoder.magnet_tilt",    "pan.bearing.spacing",    "pan.bearing.overhang",
      "pan.bearing.preload",        "pan.encoder.error"};
  int bought = 0;
  for (const Check* check : axis_checks())
    for (const Lever& lever : check->levers) {
      const std::string path = for_axis(lever.path, Axis::pan);
      const bool is_part =
          std::ranges::any_of(std::initializer_list<const char*>{"pan.motor.", "pan.gearbox.",
                                                                 "pan.encoder.", "pan.bearing."},
                              [&](const char* part) { return path.starts_with(part); });
      if (!is_part) continue;
      const Change change = lever.way == Way::up ? Change::or_more : Change::or_less;
      const bool is_of_another = is_bought(path, change);
      bought += is_of_another;
      EXPECT_TRUE(is_of_another || settable.contains(path)) << check->id << ": " << path;
    }
  EXPECT_GT(bought, 20);
}

TEST(RemedyWords, TheSamplesRemediesProposeOtherPartsToo) {
  int another = 0;
  for (const char* name : {"quick-newt", "hasty-heron", "harbour-cormorant"}) {
    const auto file = std::filesystem::path(GAZEWRIGHT_SOURCE_DIR) / "sample-rigs" /
                      (name + std::string(".rig.yaml"));
    const Analysis analysis = analyse(load_rig(file).rig.value());
    for (const Finding& finding : analysis.findings)
      for (const Remedy& remedy : finding.remedies) {
        const bool is_of_another =
            !remedy.path.empty() && remedy.path != "swap" &&
            (is_bought(remedy.path, Change::or_more) || is_bought(remedy.path, Change::or_less));
        if (!is_of_another || remedy.path.ends_with("encoder.error")) continue;
        ++another;
        EXPECT_NE(remedy.text.find(" ("), std::string::npos) << remedy.text;
        EXPECT_EQ(remedy.text.find(remedy.path.substr(0, remedy.path.find('.')) + " motor "),
                  std::string::npos)
            << remedy.text;
      }
  }
  EXPECT_GT(another, 0);
}

}  // namespace
}  // namespace gazewright
