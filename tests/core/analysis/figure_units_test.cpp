#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/analysis/analysis.h"
#include "core/files/rig_file.h"
#include "core/units/units.h"

/// Every figure and finding can be shown in the unit that its table gives.
namespace gazewright {
namespace {

TEST(FigureUnits, EveryFigureConvertsToTheUnitItIsShownIn) {
  for (const FigureInfo& info : figure_table()) {
    const double shown = from_si(1, info.si_unit, info.unit);
    EXPECT_TRUE(std::isfinite(shown) && (shown > 0 || info.unit == "degC"))
        << info.id << ": " << shown;
    EXPECT_NEAR(to_si(shown, info.si_unit, info.unit), 1, 1e-12) << info.id;
  }
}

TEST(FigureUnits, EveryFindingConvertsToTheUnitItIsShownIn) {
  const std::string file = std::string(GAZEWRIGHT_SOURCE_DIR) + "/sample-rigs/hasty-heron.rig.yaml";
  const LoadedRig loaded = load_rig(file);
  ASSERT_TRUE(loaded.rig);
  for (const Finding& finding : analyse(*loaded.rig).findings)
    EXPECT_TRUE(std::isfinite(from_si(1, finding.si_unit, finding.unit))) << finding.id;
}

TEST(FigureUnits, AFrequencyInHertzIsTurnsASecond) {
  EXPECT_DOUBLE_EQ(from_si(2 * std::numbers::pi * 50, "rad/s", "Hz"), 50);
  EXPECT_DOUBLE_EQ(to_si(50, "rad/s", "Hz"), 2 * std::numbers::pi * 50);
}

}  // namespace
}  // namespace gazewright
