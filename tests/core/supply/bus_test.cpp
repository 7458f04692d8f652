#include "core/supply/bus.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::Random;

constexpr double kRow_s = 125e-6;

std::vector<double> constant(double power_W, double time_s) {
  return std::vector<double>(static_cast<std::size_t>(std::lround(time_s / kRow_s)) + 1, power_W);
}
/// Nothing, then a half wave of returned power, then nothing.
std::vector<double> braking(double most_W, double time_s) {
  std::vector<double> power_W = constant(0, 0.01);
  const auto rows = static_cast<int>(std::lround(time_s / kRow_s));
  for (int i = 0; i <= rows; ++i)
    power_W.push_back(-most_W * std::sin(std::numbers::pi * i / rows));
  power_W.resize(power_W.size() + 100, 0.0);
  return power_W;
}

TEST(Bus, RisesByTheEnergyThatItsCapacitorsTake) {
  const Bus bus{.voltage_V = 24, .capacitance_F = 1e-3};
  const std::vector<double> power_W = braking(30, 0.02);
  const PowerSums sums = power_sums(power_W, kRow_s);
  // ∫ of the half wave, 2·30·0.02/π; the straight pieces miss (π/160)²/12 of it.
  EXPECT_NEAR(sums.returned_J, 2 * 30 * 0.02 / std::numbers::pi, tol(4e-5 * sums.returned_J));
  const BusRun run = run_bus(bus, power_W, kRow_s);
  EXPECT_NEAR(run.most_V, lifted_voltage_V(24, sums.returned_J, 1e-3), tol(1e-10));
  EXPECT_NEAR(lifted_J(power_W, kRow_s, 0), sums.returned_J, tol(1e-12));
  // Nothing draws afterwards: it stays there, and no current flows.
  EXPECT_EQ(run.voltage_V.back(), run.most_V);
  EXPECT_EQ(run.source_A.back(), 0);
}

TEST(Bus, StaysAtTheSourceWhereItAbsorbsAllThatComesBack) {
  const Bus bus{.voltage_V = 24, .capacitance_F = 1e-3, .absorbs_A = 2};
  const BusRun run = run_bus(bus, braking(30, 0.02), kRow_s);
  EXPECT_EQ(run.most_V, 24);
  EXPECT_NEAR(run.source_A[80 + 81], -30.0 / 24, tol(1e-3));
}

TEST(Bus, RisesLessByWhatTheSourceAbsorbs) {
  // A steady return of 60 W against 1 A: C·V·dV/dt = 60 − V, so V = 60 − 36·exp(...) is implicit:
  // t = C·((24 − V) + 60·ln(36/(60 − V))).
  const Bus bus{.voltage_V = 24, .capacitance_F = 2e-3, .absorbs_A = 1};
  std::vector<double> power_W = constant(-60, 0.02);
  power_W.front() = 0;
  const double V = run_bus(bus, power_W, kRow_s, 64).voltage_V.back();
  // The first row rises straight to 60 W, and up to 24 W of that the source takes: 0.6 of the row
  // with 18 W of 36 W on average, as if it began 0.7 of a row later. Order 1 in 2 µs: 2e-6.
  EXPECT_NEAR(2e-3 * ((24 - V) + 60 * std::log(36 / (60 - V))), 0.02 - 0.7 * kRow_s, tol(5e-6));
}

TEST(Bus, IsHeldByItsChopperAsLongAsTheResistorIsSmallEnough) {
  Bus bus{.voltage_V = 24, .capacitance_F = 1e-3, .chopper_V = 28, .resistor_ohm = 10};
  const std::vector<double> power_W = braking(60, 0.02);
  const BusRun held = run_bus(bus, power_W, kRow_s);
  EXPECT_EQ(held.most_V, 28) << "28²/10 = 78.4 W is more than 60 W";
  EXPECT_NEAR(held.most_resistor_W, 78.4, tol(1e-12));
  const double returned_J = power_sums(power_W, kRow_s).returned_J;
  // What lifted it to 28 V is in the capacitors, the rest in the resistor.
  EXPECT_NEAR(held.resistor_J,
              returned_J - capacitor_energy_J(1e-3, 28) + capacitor_energy_J(1e-3, 24), tol(1e-9));
  bus.resistor_ohm = 20;
  EXPECT_GT(run_bus(bus, power_W, kRow_s).most_V, 28);
  // V/I: the resistor that just takes the peak.
  bus.resistor_ohm = brake_resistor_ohm(28, 60.0 / 28);
  EXPECT_NEAR(run_bus(bus, power_W, kRow_s).most_V, 28, tol(1e-12));
}

TEST(Bus, SagsByTheResistanceOfSourceAndLeads) {
  // V² − 24·V + R·P = 0: 100 W through 0.2 Ω.
  const Bus bus{.voltage_V = 24, .resistance_ohm = 0.2, .capacitance_F = 1e-3};
  const double V = 12 + std::sqrt(144 - 20.0);
  const BusPoint steady = steady_bus(bus, 100);
  EXPECT_NEAR(steady.voltage_V, V, tol(1e-12));
  EXPECT_NEAR(steady.source_A, 100 / V, tol(1e-12));
  const BusRun run = run_bus(bus, constant(100, 0.01), kRow_s);
  EXPECT_NEAR(run.least_V, V, tol(1e-12));
  EXPECT_FALSE(run.starved);
  EXPECT_TRUE(steady_bus(bus, 721).starved) << "24²/(4·0.2) = 720 W is all there is";
  EXPECT_FALSE(steady_bus(bus, 719).starved);
}

TEST(Bus, ChargesItsCapacitorsThroughTheResistanceInRC) {
  // Without load from a low voltage: (24 − V) falls by 1/e each R·C. The power before has pulled
  // it down.
  const Bus bus{.voltage_V = 24, .resistance_ohm = 0.5, .capacitance_F = 10e-3};
  std::vector<double> power_W = constant(100, 1e-3);
  const std::size_t from = power_W.size();
  power_W.resize(from + 80, 0.0);
  const BusRun run = run_bus(bus, power_W, kRow_s, 64);
  const double gone_s = 79 * kRow_s;
  // Order 1: half a step of 2 µs over R·C = 5 ms a time constant.
  EXPECT_NEAR((24 - run.voltage_V.back()) / (24 - run.voltage_V[from]), std::exp(-gone_s / 5e-3),
              tol(1e-3));
}

TEST(Bus, WithoutCapacitorsHasNothingToHoldIt) {
  const Bus bus{.voltage_V = 24};
  EXPECT_TRUE(std::isinf(steady_bus(bus, -1).voltage_V));
  EXPECT_EQ(steady_bus(bus, 0).voltage_V, 24);
  EXPECT_EQ(steady_bus(bus, 48).source_A, 2);
}

TEST(Bus, OfAnyKindKeepsItsEnergy) {
  // From the source, at the drives = into drives + resistor + capacitors.
  Random random(31);
  for (int round = 0; round < 60; ++round) {
    Bus bus{.voltage_V = random.log_uniform(6, 60),
            .resistance_ohm = random.chance(0.3) ? 0 : random.log_uniform(1e-3, 0.1),
            .capacitance_F = random.log_uniform(1e-4, 2e-2),
            .absorbs_A = random.chance(0.5) ? 0 : random.log_uniform(0.1, 5)};
    if (random.chance(0.5)) {
      bus.chopper_V = bus.voltage_V * random.uniform(1.05, 1.5);
      bus.resistor_ohm = random.log_uniform(0.5, 50);
    }
    const double most_W = bus.voltage_V * random.log_uniform(0.5, 5);
    std::vector<double> power_W;
    power_W.reserve(800);
    for (int row = 0; row < 800; ++row)
      power_W.push_back(most_W * (std::sin(0.02 * row) + 0.4 * std::sin(0.31 * row + round)));
    const BusRun run = run_bus(bus, power_W, kRow_s, 1);
    // Each implicit step balances exactly with the values at its end.
    double into_J = 0;
    for (std::size_t row = 0; row < power_W.size(); ++row) {
      ASSERT_TRUE(std::isfinite(run.voltage_V[row] + run.source_A[row])) << round;
      ASSERT_GE(run.source_A[row], -bus.absorbs_A * (1 + 1e-9)) << round;
      ASSERT_FALSE(run.starved) << round;
      if (row > 0) into_J += kRow_s * (run.voltage_V[row] * run.source_A[row] - power_W[row]);
    }
    const double stored_J = capacitor_energy_J(bus.capacitance_F, run.voltage_V.back()) -
                            capacitor_energy_J(bus.capacitance_F, run.voltage_V.front());
    const double size_J =
        power_sums(power_W, kRow_s).drawn_J + capacitor_energy_J(bus.capacitance_F, bus.voltage_V);
    EXPECT_NEAR((into_J - run.resistor_J - stored_J) / size_J, 0, tol(1e-11)) << round;
  }
}

TEST(PowerSums, SplitAStraightLineWhereItPassesZero) {
  const std::vector<double> power_W{3, -1};
  const PowerSums sums = power_sums(power_W, 1);
  EXPECT_NEAR(sums.drawn_J, 0.75 * 3 / 2, tol(1e-15));
  EXPECT_NEAR(sums.returned_J, 0.25 * 1 / 2, tol(1e-15));
  EXPECT_EQ(sums.most_W, 3);
  EXPECT_EQ(sums.most_returned_W, 1);
  EXPECT_NEAR(integral(power_W, 1, 0.5), 0.5 * (3 + 1) / 2, tol(1e-15));
  EXPECT_NEAR(integral(power_W, 1, 3), 1 - 2, tol(1e-15)) << "the last value stays";
}

}  // namespace
}  // namespace gazewright
