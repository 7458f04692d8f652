#include "core/travel/tab_material.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/rig/fields.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

TEST(TabMaterial, EveryMaterialOfTheRigFileIsListedWithItsSpread) {
  const ChoiceInfo* material = nullptr;
  for (const auto& row : table_of<Stops>().choices)
    if (row.info.key == "material") material = &row.info;
  ASSERT_NE(material, nullptr);
  for (const std::string_view option : material->options) {
    Stops stops;
    stops.material = {std::string(option)};
    const auto strength = tab_strength(stops);
    EXPECT_EQ(strength.has_value(), option != "unstated") << option;
    if (!strength) continue;
    EXPECT_GT(strength->tensile_Pa, 20e6) << option;
    EXPECT_LT(strength->tensile_Pa, strength->most_tensile_Pa) << option;
    EXPECT_GE(strength->shear_Pa, 0.5 * strength->tensile_Pa) << option;
    EXPECT_LT(strength->shear_Pa, 0.6 * strength->tensile_Pa) << option;
  }
  EXPECT_EQ(tab_materials().size() + 1, material->options.size());
}

TEST(TabMaterial, AnEnteredStrengthGoesBeforeTheListAndLosesItsSpread) {
  Stops stops;
  stops.material = {"pla"};
  stops.tab_strength_Pa = si_quantity(30e6);
  stops.tab_strength_Pa.spread_si = 6e6;
  EXPECT_DOUBLE_EQ(tab_strength(stops)->tensile_Pa, 24e6);
  EXPECT_DOUBLE_EQ(tab_strength(stops)->shear_Pa, 12e6);
  EXPECT_DOUBLE_EQ(tab_strength(stops)->most_tensile_Pa, 36e6);
  stops.tab_strength_Pa.spread_si = 40e6;
  EXPECT_EQ(tab_strength(stops)->tensile_Pa, 0) << "never negative";
  stops.material = {};
  EXPECT_TRUE(tab_strength(stops)) << "strength alone is enough";
}

TEST(TabMaterial, ATabIsAShortCantilever) {
  // 600 N at 5 mm on a root of 10 by 6 mm: M = 3 N·m, W = 100 mm³.
  EXPECT_NEAR(tab_bending_Pa(600, 0.005, 0.010, 0.006), 30e6, tol(1e-7));
  EXPECT_NEAR(tab_shear_Pa(600, 0.010, 0.006), 10e6, tol(1e-7));
}

}  // namespace
}  // namespace gazewright
