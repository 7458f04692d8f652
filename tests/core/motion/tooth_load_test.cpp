#include "core/motion/tooth_load.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/tol.h"

namespace gazewright {
namespace {

AxisModel toothed() {
  AxisModel model;
  model.gear = {
      .ratio = 10, .backlash_rad = 0.002, .stiffness_Nmprad = 500, .damping_Nmsprad = 0.3};
  model.gear.rotor_inertia_kgm2 = 1e-5;
  return model;
}

/// Two samples: teeth apart, then wound up by 3 mrad at 0.1 rad/s.
Trace closing() {
  Trace trace;
  trace.sample_time_s = 1e-3;
  trace.time_s = {0, 1e-3};
  trace.angle_rad = {0, 0};
  trace.motor_angle_rad = {0.005, 0.04};
  trace.speed_radps = {0, 2};
  trace.motor_speed_radps = {30, 21};
  return trace;
}

TEST(ToothPeak, IsStiffnessTimesWindUpAndWhatItDamps) {
  const ToothPeak peak = tooth_peak(toothed(), closing(), 1);
  // 40 mrad at the motor are 4 at the output, 3 beyond half of the gap; 500·3e-3 + 0.3·0.1.
  EXPECT_NEAR(peak.torque_Nm, 1.53, tol(1e-12));
  EXPECT_EQ(peak.at_s, 1e-3);
  EXPECT_EQ(peak.input_radps, 30);
  EXPECT_EQ(tooth_peak(toothed(), closing(), 0.5e-3).torque_Nm, 0);
}

TEST(ToothWear, CountsTheAngleTurnedAndNotTheTimeAtRest) {
  Trace trace = closing();
  EXPECT_NEAR(tooth_wear(toothed(), trace).mean_Nm(), 1.53, tol(1e-12));
  trace.speed_radps[0] = 2;  // as far again without a torque
  EXPECT_NEAR(tooth_wear(toothed(), trace).mean_Nm(), 1.53 / std::cbrt(2.0), tol(1e-12));
  trace.speed_radps = {0, 0};
  EXPECT_EQ(tooth_wear(toothed(), trace).mean_Nm(), 0);
}

}  // namespace
}  // namespace gazewright
