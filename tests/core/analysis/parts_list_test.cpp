#include "core/analysis/parts_list.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

#include "core/files/rig_file.h"

namespace gazewright {
namespace {

Rig newt() {
  return load_rig(std::filesystem::path(GAZEWRIGHT_SOURCE_DIR) / "sample-rigs/quick-newt.rig.yaml")
      .rig.value();
}

const PartLine* find(const std::vector<PartLine>& lines, std::string_view what,
                     std::optional<Axis> axis) {
  const auto at = std::ranges::find_if(
      lines, [&](const PartLine& line) { return line.what == what && line.axis == axis; });
  return at == lines.end() ? nullptr : &*at;
}

TEST(PartsList, SaysWhichPartGoesWhere) {
  const auto lines = parts_list(newt());
  const PartLine* motor = find(lines, "Motor", Axis::pan);
  ASSERT_NE(motor, nullptr);
  EXPECT_EQ(motor->name, "flat outrunner 42");
  EXPECT_EQ(motor->key, "300 rpm/V, 160 mΩ, 7 pole pairs, peak 24 A");
  EXPECT_NEAR(motor->mass_kg.value(), 0.096, 1e-15);
  const PartLine* gearbox = find(lines, "Gearbox", Axis::tilt);
  ASSERT_NE(gearbox, nullptr);
  EXPECT_EQ(gearbox->name, "one stage, 5 to 1");
  EXPECT_TRUE(gearbox->key.starts_with("5 : 1")) << gearbox->key;
  ASSERT_NE(find(lines, "Cable", Axis::pan), nullptr);
  EXPECT_EQ(find(lines, "Cable", Axis::pan)->quantity, 2);
  EXPECT_EQ(find(lines, "Bearing", Axis::tilt)->quantity, 2);
  EXPECT_EQ(find(lines, "Screw of the joint", Axis::pan)->quantity, 6);
  EXPECT_EQ(find(lines, "Screw of the joint", Axis::pan)->name, "M3");
  EXPECT_NE(find(lines, "Second encoder", Axis::tilt), nullptr);
  EXPECT_EQ(find(lines, "Second encoder", Axis::pan), nullptr);
  EXPECT_NE(find(lines, "Camera", std::nullopt), nullptr);
  EXPECT_NE(find(lines, "Brake resistor", std::nullopt), nullptr);
}

TEST(PartsList, HasEveryBodyAndMarksThoseThatStandForAPart) {
  const Rig rig = newt();
  const auto lines = parts_list(rig);
  const auto bodies = std::ranges::count(lines, std::string_view("Body"), &PartLine::what);
  EXPECT_EQ(std::size_t(bodies), rig.on_pan.size() + rig.on_tilt.size());
  for (const PartLine& line : lines)
    EXPECT_EQ(line.is_carried,
              line.what == "Body" && (line.name == "tilt motor" || line.name == "tilt gearbox"))
        << line.name;
}

TEST(PartsList, NamesAMassThatIsMissing) {
  const auto lines = parts_list(Rig{});
  const PartLine* motor = find(lines, "Motor", Axis::tilt);
  ASSERT_NE(motor, nullptr);
  EXPECT_FALSE(motor->mass_kg);
  EXPECT_EQ(motor->no_mass, "needs tilt.motor.mass");
  EXPECT_EQ(find(lines, "Cable", Axis::pan), nullptr);
  EXPECT_EQ(find(lines, "Brake resistor", std::nullopt), nullptr);
}

}  // namespace
}  // namespace gazewright
