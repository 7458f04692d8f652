#include "core/motion/coupled.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/motion/shared_supply.h"
#include "tests/core/motion/coupled_rigs.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::Random;
using tests::small_axis;
using tests::tied_axes;
using tests::untied_axes;

/// Largest difference of two angles at the rows that both have, over the move.
double apart(const Trace& a, const Trace& b, double move_rad) {
  EXPECT_EQ(a.angle_rad.size(), b.angle_rad.size());
  double most = 0;
  for (std::size_t row = 0; row < std::min(a.angle_rad.size(), b.angle_rad.size()); ++row)
    most = std::max(most, std::abs(a.angle_rad[row] - b.angle_rad[row]));
  return most / std::abs(move_rad);
}

TEST(BothAxes, MoveAsEachDoesAloneWhereNothingTiesThem) {
  const CoupledModel model = untied_axes();
  const CoupledTrace both = simulate_both(model, {0.7, -0.4}, 0.4);
  const CoupledTrace pan = simulate_both(model, {0.7, 0}, 0.4);
  // Each integration is within some 1e-6 of the move of the truth, an axis that hunts in its gap
  // within 1e-5; the shared supply has enough for both here.
  EXPECT_EQ(both.short_s, 0);
  EXPECT_LE(apart(both.of(Axis::pan), simulate_step(model.axis[0], 0.7, 0.4), 0.7), tol(2e-5));
  EXPECT_LE(apart(both.of(Axis::tilt), simulate_step(model.axis[1], -0.4, 0.4), 0.4), tol(2e-5));
  EXPECT_LE(apart(pan.of(Axis::pan), simulate_step(model.axis[0], 0.7, 0.4), 0.7), tol(2e-5));
  for (const double angle_rad : pan.of(Axis::tilt).angle_rad) ASSERT_EQ(angle_rad, 0);
}

TEST(BothAxes, TakeTheSlowerDrivesSamplesAtTheirOwnTimes) {
  CoupledModel model = untied_axes();
  model.axis[1].control.control_rate_Hz = 5000;
  const CoupledTrace both = simulate_both(model, {0.7, 0.4}, 0.2);
  const Trace tilt = simulate_step(model.axis[1], 0.4, 0.2);
  EXPECT_DOUBLE_EQ(both.of(Axis::tilt).sample_time_s, 1 / 8000.0);
  EXPECT_LE(apart(both.of(Axis::pan), simulate_step(model.axis[0], 0.7, 0.2), 0.7), tol(2e-5));
  for (std::size_t row = 0; row < tilt.time_s.size(); row += 5)  // every fifth is a row of both
    EXPECT_NEAR(both.of(Axis::tilt).angle_rad[row * 8 / 5], tilt.angle_rad[row], tol(0.4 * 2e-5));
}

TEST(BothAxes, HoldAgainstGravityWithoutAMoveAndStayExactlyThere) {
  CoupledModel model = tied_axes();
  model.bodies.lean_rad = 0.3;
  const CoupledTrace trace = simulate_both(model, {0, 0}, 0.05);
  for (const Axis axis : kAxes) {
    // Rounding of some 1e-17 N·m of torque against 1e-3 kg·m², over 0.05 s.
    for (const double angle_rad : trace.of(axis).angle_rad) ASSERT_NEAR(angle_rad, 0, tol(1e-12));
    EXPECT_NE(trace.of(axis).current_A.back(), 0);
  }
}

TEST(BothAxes, PushEachOtherWhereTheLoadTiesThem) {
  const CoupledTrace trace = simulate_both(tied_axes(), {0.7, 0}, 0.4);
  double most_rad = 0;
  for (const double angle_rad : trace.of(Axis::tilt).angle_rad)
    most_rad = std::max(most_rad, std::abs(angle_rad));
  EXPECT_GT(most_rad, 1e-5);
  EXPECT_LT(most_rad, 0.1);
}

// Closed form: torque on pan alone, no gravity, no speed: θ̈/ψ̈ = −M12/M22.
TEST(RigidAcceleration, OfAFreeAxisFollowsFromTheMassMatrix) {
  RigBodies bodies = tied_axes().bodies;
  bodies.on_tilt.p_OC_m = {0, 0, 0};  // weightless about tilt
  const Eigen::Vector2d q(0.3, 0.6);
  const auto radps2 = rigid_acceleration_radps2(bodies, q, {0, 0}, {1, 0});
  const auto M = mass_matrix_kgm2(bodies, q[1]);
  EXPECT_NE(M(0, 1), 0);
  EXPECT_NEAR(radps2[1] / radps2[0], -M(0, 1) / M(1, 1), tol(1e-13));
}

double energy_J(const RigBodies& bodies, const RigidState& state) {
  const Eigen::Vector2d rate(state.rate_radps.pan, state.rate_radps.tilt);
  const double tilt_rad = state.angle_rad.tilt, pan_rad = state.angle_rad.pan;
  const Eigen::Vector3d up(-std::sin(bodies.lean_rad), 0, std::cos(bodies.lean_rad));  // in B
  const Eigen::Matrix3d pan(Eigen::AngleAxisd(pan_rad, Eigen::Vector3d::UnitZ()));
  const Eigen::Matrix3d tilt(Eigen::AngleAxisd(-tilt_rad, Eigen::Vector3d::UnitY()));
  const Eigen::Vector3d moment_kgm =
      bodies.on_pan.mass_kg * bodies.on_pan.p_OC_m +
      bodies.on_tilt.mass_kg * (bodies.p_PT_m + tilt * bodies.on_tilt.p_OC_m);
  return 0.5 * rate.dot(mass_matrix_kgm2(bodies, tilt_rad) * rate) +
         kStandardGravity_mps2 * up.dot(pan * moment_kgm);
}

TEST(RigidStep, KeepsTheEnergyWithMotorsAndFrictionOff) {
  Random random(11);
  for (int round = 0; round < 40; ++round) {
    const RigBodies bodies = rig_bodies(tests::random_bodies_rig(random));
    const TwoAxisEquations equations(bodies);
    RigidState state{{random.uniform(-3, 3), random.uniform(-3, 3)},
                     {random.uniform(-5, 5), random.uniform(-5, 5)}};
    const double start_J = energy_J(bodies, state);
    const Eigen::Vector2d rate(state.rate_radps.pan, state.rate_radps.tilt);
    const double size_J =
        rate.dot(mass_matrix_kgm2(bodies, state.angle_rad.tilt) * rate) + std::abs(start_J);
    for (int step = 0; step < 5000; ++step) state = rigid_step(equations, state, {}, 1e-4);
    // Order 4: (ω·h)⁵/120 a step at ω up to some 50 rad/s is 3e-14, 5000 of them 1e-10.
    EXPECT_NEAR(energy_J(bodies, state) / size_J, start_J / size_J, tol(1e-8)) << round;
  }
}

double drawn_W(const AxisModel& axis, double torque_Nm, double motor_radps) {
  return bus_power_W(axis.drive, torque_Nm / axis.drive.torque_constant_NmpA, motor_radps);
}

TEST(SharedSupply, GivesEachDriveThatDrawsTheSamePartOfWhatItWants) {
  AxisModel pan = small_axis(), tilt = small_axis();
  for (AxisModel* axis : {&pan, &tilt}) axis->drive.supply_current_limit_A = 3;
  tilt.drive.phase_resistance_ohm = 0.2;
  const SharedTorque shared(pan, tilt);
  const BothAxes wanted{0.3, 0.2}, speed{100, 200};
  const BothAxes got = shared.at(wanted, speed);
  const double part = shared.part(wanted, speed);
  EXPECT_LT(part, 0.9);
  EXPECT_NEAR(drawn_W(pan, got[0], 100) / drawn_W(pan, 0.3, 100), part, tol(1e-12));
  EXPECT_NEAR(drawn_W(tilt, got[1], 200) / drawn_W(tilt, 0.2, 200), part, tol(1e-12));
  EXPECT_NEAR(drawn_W(pan, got[0], 100) + drawn_W(tilt, got[1], 200), 24 * 3, tol(1e-10));
}

TEST(SharedSupply, LetsWhatABrakingDriveReturnsFeedTheOther) {
  AxisModel pan = small_axis(), tilt = small_axis();
  for (AxisModel* axis : {&pan, &tilt}) axis->drive.supply_current_limit_A = 3;
  const SharedTorque shared(pan, tilt);
  const BothAxes wanted{0.4, -0.1}, speed{300, 500};
  const BothAxes got = shared.at(wanted, speed);
  EXPECT_EQ(got[1], -0.1);
  const double returned_W = -drawn_W(tilt, -0.1, 500);
  EXPECT_GT(returned_W, 10);
  EXPECT_NEAR(drawn_W(pan, got[0], 300), 24 * 3 + returned_W, tol(1e-10));
}

TEST(SharedSupply, LimitsOneDriveAloneAsSectionFiveDoes) {
  AxisModel pan = small_axis();
  pan.drive.supply_current_limit_A = 3;
  const SharedTorque shared(pan, pan);
  for (const double speed : {0.0, 50.0, 400.0}) {
    const double got_Nm = shared.at(BothAxes{0.6, 0}, BothAxes{speed, 0})[0];
    EXPECT_NEAR(got_Nm, ActingTorque(pan).at(0.6, speed), tol(1e-14)) << speed;
  }
}

TEST(SharedSupply, IsNeverAskedForMoreThanItsLimit) {
  Random random(5);
  for (int round = 0; round < 12; ++round) {
    CoupledModel model = tied_axes();
    const double limit_A = random.log_uniform(0.2, 8);
    for (AxisModel& axis : model.axis) {
      axis.drive.supply_current_limit_A = limit_A;
      axis.drive.phase_resistance_ohm = random.log_uniform(0.02, 1);
    }
    const CoupledTrace trace = simulate_both(model, {0.7, 0.5}, 0.3);
    for (const double bus_A : trace.bus_A) ASSERT_LE(bus_A, limit_A * (1 + 1e-12)) << round;
    for (std::size_t row = 0; row < trace.bus_A.size(); ++row)
      ASSERT_NEAR(trace.bus_A[row], trace.axis[0].bus_A[row] + trace.axis[1].bus_A[row], 1e-12);
  }
}

TEST(SharedSupply, ThatIsWeakMakesBothMovesSlower) {
  CoupledModel model = tied_axes();
  const auto slow = [&](double limit_A) {
    for (AxisModel& axis : model.axis) axis.drive.supply_current_limit_A = limit_A;
    return simulate_both_until_settled(model, {0.7, 0.4}, 0.01);
  };
  const SettledMoves rich = slow(kInfinity), poor = slow(0.6);
  EXPECT_EQ(rich.trace.short_s, 0);
  EXPECT_GT(poor.trace.short_s, 0.01);
  EXPECT_GT(poor.settle_time_s.value(), rich.settle_time_s.value() * 1.02);
}

TEST(BothAxes, OfAnyScaleEndFiniteAndWithinTheCurrentLimit) {
  Random random(7);
  for (int round = 0; round < 40; ++round) {
    CoupledModel model = tied_axes();
    model.bodies = rig_bodies(tests::random_bodies_rig(random));
    for (AxisModel& axis : model.axis) {
      axis.gear.ratio = random.log_uniform(0.01, 1000);
      axis.gear.stiffness_Nmprad = random.log_uniform(0.9, 9e5);
      axis.gear.damping_Nmsprad = random.log_uniform(4e-4, 400);
      axis.gear.rotor_inertia_kgm2 = random.log_uniform(1e-7, 1e-3);
      axis.gear.backlash_rad = random.log_uniform(1e-6, 1e-2);
      axis.load.coulomb_Nm = random.log_uniform(4e-4, 4);
      axis.control.speed_gain_Nmsprad = random.log_uniform(3e-3, 30);
      axis.control.control_rate_Hz = random.log_uniform(1000, 20000);
      axis.drive.supply_current_limit_A = random.log_uniform(0.1, 100);
    }
    model.axis[1].drive.supply_current_limit_A = model.axis[0].drive.supply_current_limit_A;
    const CoupledTrace trace =
        simulate_both(model, {round % 3 == 0 ? 0 : 0.5, round % 3 == 1 ? 0 : -0.3}, 0.02);
    ASSERT_FALSE(trace.bus_A.empty());
    for (std::size_t row = 0; row < trace.bus_A.size(); ++row) {
      for (const Trace& axis : trace.axis) {
        ASSERT_TRUE(
            std::isfinite(axis.angle_rad[row] + axis.speed_radps[row] + axis.motor_angle_rad[row]))
            << round << " row " << row;
        ASSERT_LE(std::abs(axis.current_A[row]), 30 * (1 + 1e-12)) << round << " row " << row;
      }
      ASSERT_TRUE(std::isfinite(trace.bus_A[row])) << round << " row " << row;
    }
  }
}

TEST(BothAxes, ThatRunAwayEndEarlyAndFinite) {
  CoupledModel model = tied_axes();
  model.axis = {tests::linear_axis(), tests::linear_axis()};
  model.axis[1].control.speed_gain_Nmsprad = 400;
  const SettledMoves moves = simulate_both_until_settled(model, {0.1, 0.1}, 0.001);
  EXPECT_TRUE(moves.trace.ran_away);
  EXPECT_FALSE(moves.settle_time_s);
  for (const double bus_A : moves.trace.bus_A) ASSERT_TRUE(std::isfinite(bus_A));
}

// A point mass on the pan axis, right above the tilt axis: no inertia about pan.
TEST(BothAxes, WithoutInertiaEndAtOnceInsteadOfSayingNonsense) {
  CoupledModel model = tied_axes();
  model.bodies = {};
  model.bodies.on_tilt.mass_kg = 1;
  model.bodies.on_tilt.I_O_kgm2(1, 1) = 1e-3;
  const CoupledTrace trace = simulate_both(model, {0.1, 0.1}, 0.01);
  EXPECT_TRUE(trace.ran_away);
  for (const double angle_rad : trace.of(Axis::pan).angle_rad)
    ASSERT_TRUE(std::isfinite(angle_rad));
}

TEST(BothAxes, StopWhenAsked) {
  std::stop_source source;
  source.request_stop();
  EXPECT_LT(simulate_both(tied_axes(), {0.7, 0.4}, 0.6, source.get_token()).bus_A.size(), 300u);
}

}  // namespace
}  // namespace gazewright
