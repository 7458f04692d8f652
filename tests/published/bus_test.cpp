#include "core/supply/bus.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/motion/slowing.h"
#include "tests/core/motion/small_axis.h"
#include "tests/support/tol.h"

/// Numbers of textbooks about capacitors and braking.
namespace gazewright {
namespace {

TEST(PublishedBus, CapacitorsHoldAndGiveTheEnergyOfTheTextbook) {
  // Source: J. O. Bird, Electrical Circuit Theory and Technology, ch. 6, ex. 15, p. 68: 3 µF at
  // 400 V hold 0.24 J; given off in 10 µs that is 24 kW.
  EXPECT_DOUBLE_EQ(capacitor_energy_J(3e-6, 400), 0.24);
  EXPECT_NEAR(capacitor_energy_J(3e-6, 400) / 10e-6, 24e3, tol(1e-9));
  // Ex. 16: 4 J in 12 µF ask for 816.5 V (printed to four digits).
  EXPECT_NEAR(lifted_voltage_V(0, 4, 12e-6), 816.5, tol(0.05));
}

TEST(PublishedBus, RisesByTheEnergyOfABrakedWheel) {
  // Energy balance: 24 V, 1000 µF, ½·1e-3 kg·m²·(20 rad/s)² = 0.2 J: 31.24 V.
  const double energy_J = 0.5 * 1e-3 * 20 * 20;
  EXPECT_NEAR(lifted_voltage_V(24, energy_J, 1000e-6), 31.24, tol(0.01));
  EXPECT_NEAR(needed_capacitance_F(energy_J, 24, lifted_voltage_V(24, energy_J, 1e-3)), 1e-3,
              tol(1e-15));
  // The same through the simulated bus: 20 W for 10 ms. Straight pieces, so exact.
  std::vector<double> power_W(82, -20.0);
  power_W.front() = power_W.back() = 0;
  const BusRun run = run_bus({.voltage_V = 24, .capacitance_F = 1e-3}, power_W, 10e-3 / 80);
  EXPECT_NEAR(run.most_V, 31.24, tol(0.01));
}

TEST(PublishedBus, BrakesWithTheResistorOfTheTextbook) {
  // Source: G. K. Dubey, Fundamentals of Electrical Drives, ex. 5.9(a), p. 84: 220 V, 175 A,
  // 0.08 Ω, 1000 rpm; braking from 1050 rpm with twice the rated current: 0.538 Ω.
  const double emf_V = (220 - 175 * 0.08) * 1050 / 1000;
  EXPECT_NEAR(brake_resistor_ohm(emf_V, 2 * 175, 0.08), 0.538, tol(5e-4));
}

TEST(PublishedBus, ABrakedRotorGivesUpItsKineticEnergy) {
  // Source: S. K. Pillai, A First Course on Electrical Drives, ex. 6.6, p. 131: 0.0486 kg·m² at
  // the synchronous speed of 50 Hz and four poles: 599.6 J a stop.
  AxisModel rotor = tests::braked_at(100);
  rotor.load.inertia_kgm2 = 0.0486;
  rotor.gear.rotor_inertia_kgm2 = 0;
  const double speed_radps = 2 * M_PI * 50 / 2;
  const double torque_Nm = 0.0486 * slowing_radps2(rotor, Slowing::braking, speed_radps, 0);
  const auto angle_rad = stopping_angle_rad(rotor, Slowing::braking, speed_radps, 0);
  ASSERT_TRUE(angle_rad);
  EXPECT_NEAR(torque_Nm * *angle_rad, 599.6, tol(1e-3 * 599.6));
}

}  // namespace
}  // namespace gazewright
