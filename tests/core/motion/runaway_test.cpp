#include "core/motion/runaway.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/tol.h"

namespace gazewright {
namespace {

/// 0.2 N·m at the motor through 10 : 1 without losses, 5 kg·m² in all, and volts without end.
AxisModel frictionless() {
  AxisModel model;
  model.drive.torque_constant_NmpA = 0.02;
  model.drive.phase_resistance_ohm = 0.05;
  model.drive.pole_pairs = 7;
  model.drive.bus_voltage_V = 1e6;
  model.drive.modulation_limit = 1;
  model.drive.current_limit_A = 10;
  model.drive.supply_current_limit_A = kInfinity;
  model.gear.ratio = 10;
  model.gear.rotor_inertia_kgm2 = 0.01;
  model.load.inertia_kgm2 = 4;
  return model;
}

TEST(Runaway, WithTorqueToSpareGainsTheWorkOfItsTorque) {
  // Closed form: ½Jω² = T·φ, T = 10·0.02·10 = 2 N·m, J = 4 + 100·0.01 = 5 kg·m².
  EXPECT_NEAR(runaway_speed_radps(frictionless(), 3.0), std::sqrt(2 * 2 * 3.0 / 5), tol(1e-5));
}

TEST(Runaway, IsNotHeldByTheDrivesSpeedLimit) {
  AxisModel held = frictionless();
  held.drive_speed_limit_radps = 0.1;
  EXPECT_EQ(runaway_speed_radps(held, 3.0), runaway_speed_radps(frictionless(), 3.0));
}

TEST(Runaway, EndsWhereTheVoltageDoes) {
  AxisModel model = frictionless();
  model.drive.bus_voltage_V = 1;
  // Closed form: the back-EMF 1.5⁻¹·Kt·ω_m of a phase is the whole of V/√3.
  const double free_radps = 1.5 * (1 / std::sqrt(3.0)) / 0.02 / 10;
  EXPECT_NEAR(runaway_speed_radps(model, 1e4), free_radps, tol(1e-3 * free_radps));
  EXPECT_LE(runaway_speed_radps(model, 1e4), free_radps * (1 + 1e-6));
}

TEST(Runaway, ThatCannotStartStands) {
  AxisModel model = frictionless();
  model.load.coulomb_Nm = 2.1;
  EXPECT_EQ(runaway_speed_radps(model, 1.0), 0);
}

}  // namespace
}  // namespace gazewright
