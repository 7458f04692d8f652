// Verdicts that the doubt may turn, against the closed form of the stall torque.
#include "core/analysis/open_verdicts.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/files/rig_file.h"
#include "core/rig/fields.h"
#include "tests/core/analysis/doubts_support.h"
#include "tests/support/finding.h"

namespace gazewright {
namespace {

using namespace tests;

/// Friction leaves this part of the stall torque, which is efficiency times what is exact: its
/// uncertainty is 2/√3 of the efficiency's half-range (JCGM 100:2008, 4.3.7).
Rig with_little_left(double part) {
  Rig rig = owl_without_loops();
  for (const Axis axis : kAxes) {
    rig.axis(axis).gearbox.efficiency.spread_si = {};
    rig.axis(axis).gearbox.efficiency.source = Source::measured;
  }
  const Analysis now = quick(rig);
  const Finding* torque = finding(now, "pan.move.torque");
  *rig.pan.friction.coulomb_Nm.si += *torque->capacity * (1 - part) - *torque->demand;
  return rig;
}

struct Found {
  Analysis analysis;
  Doubts doubts;
  std::vector<OpenVerdict> open;
};
Found found(const Rig& rig) {
  const Analysis analysis = quick(rig);
  const Doubts doubts = doubts_of(rig, analysis);
  return {analysis, doubts, open_verdicts(analysis, doubts)};
}
const OpenVerdict* open_of(const Found& all, std::string_view id) {
  const auto at = std::ranges::find(all.open, id, &OpenVerdict::finding);
  return at == all.open.end() ? nullptr : &*at;
}

TEST(OpenVerdicts, AreThoseWhoseFigureReachesPastItsLimit) {
  Rig rig = with_little_left(0.033);
  EXPECT_NE(finding(quick(rig), "pan.move.torque")->verdict, Verdict::fails);
  state_spread(rig, "pan.gearbox.efficiency", 0.02);  // ±2.3 %
  EXPECT_EQ(open_of(found(rig), "pan.move.torque"), nullptr);
  state_spread(rig, "pan.gearbox.efficiency", 0.03);  // ±3.46 %, yet no end crosses
  const Found near = found(rig);
  const OpenVerdict* open = open_of(near, "pan.move.torque");
  ASSERT_NE(open, nullptr);
  EXPECT_TRUE(open->turned_by.empty());
  EXPECT_TRUE(open->text.starts_with("holds, but within the doubt: ")) << open->text;
  state_spread(rig, "pan.gearbox.efficiency", 0.05);
  const Found wide = found(rig);
  open = open_of(wide, "pan.move.torque");
  ASSERT_NE(open, nullptr);
  ASSERT_EQ(open->turned_by.size(), 1U);
  EXPECT_EQ(wide.doubts.unknowns[open->turned_by[0]].path, "pan.gearbox.efficiency");
}

TEST(OpenVerdicts, ThatFailMayHoldAfterAll) {
  Rig rig = with_little_left(-0.02);
  state_spread(rig, "pan.gearbox.efficiency", 0.05);
  const Found all = found(rig);
  EXPECT_EQ(finding(all.analysis, "pan.move.torque")->verdict, Verdict::fails);
  const OpenVerdict* open = open_of(all, "pan.move.torque");
  ASSERT_NE(open, nullptr);
  EXPECT_TRUE(open->text.starts_with("fails, but within the doubt: ")) << open->text;
  EXPECT_NE(open->text.find(" short, ±"), std::string::npos) << open->text;
  EXPECT_EQ(open->turned_by.size(), 1U);
}

TEST(OpenVerdicts, PutWhatTurnsThemFirstUnderWorthMeasuring) {
  const auto ranked = [](double part) {
    Rig rig = with_little_left(part);
    state_spread(rig, "pan.gearbox.efficiency", 0.05);
    state_spread(rig, "pan.motor.rotor_inertia", 0.3);
    for (const char* mass : {"on_pan[0].mass", "on_tilt[0].mass"}) state_spread(rig, mass, 0.3);
    return found(rig);
  };
  const Found calm = ranked(0.5);
  EXPECT_EQ(open_of(calm, "pan.move.torque"), nullptr);
  ASSERT_FALSE(calm.doubts.worth.empty());
  EXPECT_NE(calm.doubts.unknowns[calm.doubts.worth[0].unknown].path, "pan.gearbox.efficiency");
  for (const Doubts::Worth& worth : calm.doubts.worth)
    EXPECT_EQ(worth.text.find("turn a verdict"), std::string::npos) << worth.text;
  const Found close = ranked(0.03);
  const Doubts::Worth& first = close.doubts.worth[0];
  EXPECT_EQ(close.doubts.unknowns[first.unknown].path, "pan.gearbox.efficiency");
  EXPECT_TRUE(first.text.ends_with("; alone it can turn a verdict: pan, Torque to start moving"))
      << first.text;
}

TEST(OpenVerdicts, OfSamplesRestOnTheFiguresTheyCompare) {
  for (const char* name : {"quick-newt", "hasty-heron", "harbour-cormorant"}) {
    const Rig rig =
        load_rig(std::string(GAZEWRIGHT_SOURCE_DIR "/sample-rigs/") + name + ".rig.yaml")
            .rig.value();
    const Found all = found(rig);
    for (const Axis axis : kAxes) {
      const std::string of = name_of(axis);
      const Finding* time = finding(all.analysis, of + ".move.time");
      const DoubtedFigure* settle = all.doubts.figure(settle_id(all.analysis, axis));
      if (settle == nullptr || !time->capacity || !time->demand) continue;
      const bool crosses = settle->uncertainty_si >= std::abs(*time->capacity - *time->demand);
      const bool may_never = !settle->is_known_whole && time->verdict != Verdict::fails;
      EXPECT_EQ(open_of(all, of + ".move.time") != nullptr, crosses || may_never) << name << of;
    }
  }
}

}  // namespace
}  // namespace gazewright
