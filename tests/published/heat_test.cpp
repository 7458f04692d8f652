#include <gtest/gtest.h>

#include <cmath>
#include <tuple>

#include "core/data/materials.h"
#include "core/heat/copper.h"
#include "core/heat/duty_types.h"
#include "core/heat/limits.h"
#include "core/heat/thermal_model.h"
#include "tests/support/tol.h"

/// Copper's resistance, thermal classes and duty types against printed examples.
namespace gazewright {
namespace {

double at_K(double celsius) { return 273.15 + celsius; }

TEST(PublishedHeat, CopperGrowsByItsCoefficientAtZero) {
  // Source: Bird, Electrical and Electronic Principles and Technology, ch. 3, problem 8, p. 27:
  // 100 Ω at 0 °C, 0.0043/°C, at 70 °C 130.1 Ω as printed.
  EXPECT_NEAR(100 * resistance_ratio(at_K(0), at_K(70), 1 / 0.0043), 130.1, tol(0.05));
}

TEST(PublishedHeat, CopperGrowsByItsCoefficientAtTwenty) {
  // Source: Bird, ch. 3, problem 11, p. 28: 10 Ω at 20 °C, 0.004/°C, at 100 °C 13.2 Ω.
  EXPECT_NEAR(10 * resistance_ratio(at_K(20), at_K(100), 1 / 0.004 - 20), 13.2, tol(1e-12));
}

TEST(PublishedHeat, ATemperatureIsReadFromTheResistance) {
  // Source: Bird, ch. 3, problem 12, p. 28: 200 Ω at 18 °C, 240 Ω warm, 0.0039/°C at 18 °C: 69.28
  // °C.
  EXPECT_NEAR(temperature_by_resistance_K(at_K(18), 240.0 / 200, 1 / 0.0039 - 18) - 273.15, 69.28,
              tol(0.01));
}

TEST(PublishedHeat, CopperBetweenTwoTemperatures) {
  // Source: Bird, ch. 3, problem 13, p. 29: 200 Ω at 20 °C, 0.004/°C at 0 °C, at 90 °C 252 Ω
  // (251.85).
  EXPECT_NEAR(200 * resistance_ratio(at_K(20), at_K(90), 1 / 0.004), 251.85, tol(0.01));
}

TEST(PublishedHeat, TheResistanceMethodOfTheStandard) {
  // Source: IEC 60034-1, 8.6: (235 + θ2)/(235 + θ1) (from memory); 335/255 by hand.
  EXPECT_NEAR(resistance_ratio(at_K(20), at_K(100)), 1.313725, tol(1e-6));
  EXPECT_NEAR(1 + kCopper_perK * 80, 1.313725, tol(1e-6));
}

TEST(PublishedHeat, AClutchedLoadSwingsAboutItsTemperatures) {
  // Source: Dubey, Fundamentals of Electrical Drives, ex. 4.1, p. 47: τ 60 s, clutched 10 s, free
  // 20 s, least rise 40 K, steady rise free 15 K: greatest rise 49.9 K, steady rise clutched 104.4
  // K. One kelvin per watt makes losses of the steady rises, all from 20 °C on.
  const MotorThermal motor{.to_air_KpW = 1, .housing_time_s = 60, .air_K = at_K(20)};
  const DutyPiece pieces[] = {{10, {104.4, 0}}, {20, {15, 0}}};
  const auto duty = steady_duty(motor, pieces);
  ASSERT_TRUE(duty);
  EXPECT_NEAR(duty->hottest.winding_K - at_K(20), 49.9, tol(0.05));
  EXPECT_NEAR(duty->start.winding_K - at_K(20), 40, tol(0.05));
}

/// One capacity, 1 K/W, copper that does not grow, air at 20 °C.
MotorThermal one_capacity(double time_s) {
  return {.to_air_KpW = 1, .housing_time_s = time_s, .air_K = at_K(20)};
}

TEST(PublishedHeat, ShortTimeDuty) {
  // Source: Dubey, ex. 4.4 (i), p. 55: 20 kW, 10 min, τ 60 min: 51.0 kW. Torque goes with current:
  // 20 A through 2/3 Ω end 400 K over the air.
  EXPECT_NEAR(short_time_current_A(one_capacity(3600), 2.0 / 3, at_K(420), 600, 1000), 51.0,
              tol(0.05));
  // Ex. 4.5, p. 56: 100 kW for half an hour, τ 80 min, constant over copper loss 0.49: 48.37 kW.
  const double copper_W = std::pow(100 / 48.37, 2), constant_W = 0.49;
  const Flow<2> flow = thermal_rate(one_capacity(4800), {copper_W, constant_W}).over(1800);
  // 48.37 without end are 1.49 K here; half of its last digit is 1e-4 of the load, 2e-4 of 1.3 K.
  EXPECT_NEAR(flow.after({0, 0})[0], 1.49, tol(3e-4));
}

TEST(PublishedHeat, IntermittentDuty) {
  // Source: Dubey, ex. 4.4 (ii), p. 55: 10 min on at τ 60 min, 10 min off at τ 90 min: 25.14 kW.
  const Flow<2> on = thermal_rate(one_capacity(3600), {std::pow(25.14 / 20, 2), 0}).over(600);
  const Flow<2> off = thermal_rate(one_capacity(5400), {}).over(600);
  const Flow<2> cycle = off.then(on);  // what the end of the load leads to again
  const double hottest = cycle.shift[0] / (1 - cycle.gain(0, 0));
  EXPECT_NEAR(hottest, 1, tol(8e-4));  // half of its last digit, twice
}

TEST(PublishedHeat, ThermalClasses) {
  // Source: IEC 60085 as public motor manuals print it.
  const std::pair<const char*, double> rows[] = {
      {"A", 105}, {"E", 120}, {"B", 130}, {"F", 155}, {"H", 180}};
  for (const auto& [name, celsius] : rows)
    EXPECT_EQ(insulation_limit_K(name), std::optional(at_K(celsius))) << name;
  EXPECT_FALSE(insulation_limit_K("unstated"));
}

TEST(PublishedHeat, PrintedMaterialsGiveWayNoLaterThanAtTheirGlassTransition) {
  // Glass transition: PLA 55 to 65 °C, PETG 71 to 85 °C (public pages of both materials). What is
  // counted on lies below it, and the range of what parts are found to bear reaches it.
  for (const auto& [name, least, most] : {std::tuple("pla", 55, 65), std::tuple("petg", 71, 85)}) {
    const Quantity softening = find_material({}, name)->softening_K;
    EXPECT_LT(least_of(softening), at_K(least)) << name;
    EXPECT_GE(softening.value() + softening.spread_si, at_K(least)) << name;
    EXPECT_LE(softening.value() + softening.spread_si, at_K(most)) << name;
  }
}

}  // namespace
}  // namespace gazewright
