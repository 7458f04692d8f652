#include "core/travel/travel.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/units/angle.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

AxisParts stopped_axis() {
  AxisParts parts;
  parts.stops.presence = Presence::given;
  parts.stops.tab_width_m = si_quantity(0.008);
  parts.stops.post_width_m = si_quantity(0.010);
  parts.stops.radius_m = si_quantity(0.026);
  parts.stops.centre_rad = si_quantity(0.3);
  parts.stops.soft_inset_rad = si_quantity(0.1);
  parts.cable.presence = Presence::given;
  parts.cable.routing = {"twist"};
  parts.cable.free_length_m = si_quantity(0.26);
  parts.cable.twist_rating_radpm = si_quantity(15);
  return parts;
}

TEST(StopTravel, IsAFullTurnLessTheAnglesOfTabAndPost) {
  // tab = r and post = r√2: each chord of the circle of radius r spans 60° and 90°.
  EXPECT_NEAR(*stop_travel_rad(0.02, 0.02 * std::numbers::sqrt2, 0.02), 2 * kPi - kPi / 3 - kPi / 2,
              tol(4e-15));
  EXPECT_EQ(*stop_travel_rad(0, 0, 0.02), 2 * kPi);
  EXPECT_NEAR(*stop_travel_rad(0.04, 0.04, 0.02), 0, tol(1e-15));
}

TEST(StopTravel, DoesNotExistWhereATabIsWiderThanItsCircle) {
  EXPECT_FALSE(stop_travel_rad(0.0401, 0.01, 0.02));
  EXPECT_FALSE(stop_travel_rad(0.01, 0.0401, 0.02));
  EXPECT_FALSE(stop_travel_rad(0.01, 0.01, 0));
  EXPECT_FALSE(stop_travel_rad(0.01, 0.01, -0.02));
  EXPECT_FALSE(stop_travel_rad(std::nan(""), 0.01, 0.02));
}

TEST(TwistTravel, CountsTheRatingEachWayFromTheUntwistedState) {
  EXPECT_DOUBLE_EQ(twist_travel_rad(15, 0.26), 7.8);
}

TEST(Travel, IsWhatStopsInsetsAndCableAllLeave) {
  AxisParts parts = stopped_axis();
  Travel travel = travel_of(parts);
  const double stops_rad = *stop_travel_rad(0.008, 0.010, 0.026);
  EXPECT_EQ(travel.stops_rad, stops_rad);
  EXPECT_EQ(travel.soft_rad, stops_rad - 0.2);
  EXPECT_DOUBLE_EQ(*travel.cable_rad, 7.8);
  EXPECT_EQ(travel.usable_rad, travel.soft_rad);
  EXPECT_DOUBLE_EQ(travel.least_rad(), 0.3 - (stops_rad - 0.2) / 2);
  EXPECT_DOUBLE_EQ(travel.most_rad(), 0.3 + (stops_rad - 0.2) / 2);

  parts.cable.free_length_m = si_quantity(0.1);
  travel = travel_of(parts);
  EXPECT_DOUBLE_EQ(*travel.usable_rad, 3);
  EXPECT_DOUBLE_EQ(travel.least_rad(), 0.3 - 1.5);
}

TEST(Travel, IsUnknownWhileALimitIsUnknown) {
  const auto usable_without = [](auto&& forget) {
    AxisParts parts = stopped_axis();
    forget(parts);
    return travel_of(parts).usable_rad;
  };
  EXPECT_TRUE(usable_without([](AxisParts&) {}));
  EXPECT_FALSE(usable_without([](AxisParts& p) { p.stops.radius_m = {}; }));
  EXPECT_FALSE(usable_without([](AxisParts& p) { p.stops.soft_inset_rad = {}; }));
  EXPECT_FALSE(usable_without([](AxisParts& p) { p.stops = {}; }));
  EXPECT_FALSE(usable_without([](AxisParts& p) { p.cable = {}; }));
  EXPECT_FALSE(usable_without([](AxisParts& p) { p.cable.free_length_m = {}; }));
}

TEST(Travel, HasNoLimitWhereTheRigSaysNone) {
  AxisParts parts = stopped_axis();
  parts.stops.presence = Presence::none;
  EXPECT_EQ(travel_of(parts).stops_rad, kInfinity);
  EXPECT_DOUBLE_EQ(*travel_of(parts).usable_rad, 7.8);
  EXPECT_EQ(travel_of(parts).centre_rad, 0);
  parts.cable.presence = Presence::none;
  EXPECT_EQ(travel_of(parts).usable_rad, kInfinity);
}

TEST(Travel, IsNotBelowZeroWhereTheInsetsMeet) {
  AxisParts parts = stopped_axis();
  parts.stops.soft_inset_rad = si_quantity(4);
  EXPECT_EQ(travel_of(parts).soft_rad, 0);
  EXPECT_EQ(travel_of(parts).usable_rad, 0);
}

TEST(Homing, CountsTheOutputAnglesThatFitOneReading) {
  EXPECT_DOUBLE_EQ(homing_spacing_rad(18), kPi / 9);
  EXPECT_EQ(homing_candidates(1.5 * kPi, 18), 14);  // 13.5
  EXPECT_EQ(homing_candidates(0.9 * homing_spacing_rad(5), 5), 1);
  for (int ratio = 1; ratio <= 200; ++ratio)  // a whole turn fits N, whatever the rounding
    EXPECT_EQ(homing_candidates(2 * kPi, ratio), ratio);
}

TEST(StopTorque, HoldsTheEnergyInTheSpring) {
  const double J_kgm2 = 0.02, speed_radps = 12, k_Nmprad = 400;
  const double peak_Nm = stop_torque_Nm(J_kgm2, speed_radps, k_Nmprad, 0);
  // A spring wound to T holds T²/2k.
  EXPECT_NEAR(peak_Nm * peak_Nm / (2 * k_Nmprad), stop_energy_J(J_kgm2, speed_radps), tol(1e-14));
  EXPECT_DOUBLE_EQ(stop_torque_Nm(J_kgm2, speed_radps, k_Nmprad, 3), peak_Nm + 3);
}

}  // namespace
}  // namespace gazewright
