#include "core/motion/rigid_move.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

#include "core/units/angle.h"
#include "tests/core/motion/small_axis.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::linear_axis;
using tests::small_axis;

/// Inertias alone under a motor torque that speed does not change.
AxisModel inertia_axis(double load_kgm2, double rotor_kgm2, double motor_torque_Nm, double ratio) {
  AxisModel axis = linear_axis();
  axis.gear.ratio = ratio;
  axis.gear.rotor_inertia_kgm2 = rotor_kgm2;
  axis.load.inertia_kgm2 = load_kgm2;
  axis.drive.current_limit_A = motor_torque_Nm / axis.drive.torque_constant_NmpA;
  return axis;
}

// Source: Siciliano et al., Robotics: Modelling, Planning and Control, Springer 2009, 4.2.1
// (t = 2·√(θ/α), from memory): 90° at 2000°/s² takes 0.424264 s, at most 424.264°/s.
TEST(FastestMove, OfAPureInertiaIsATriangleOfSpeed) {
  const double alpha = 2000 * kDegree_rad;
  const auto move = fastest_move(inertia_axis(1, 0.5, 1.5 * alpha, 1), 90 * kDegree_rad);
  ASSERT_TRUE(move);
  EXPECT_NEAR(move->time_s, 0.424264, tol(1e-6));
  EXPECT_NEAR(move->switch_time_s, 0.212132, tol(1e-6));
  EXPECT_NEAR(move->peak_speed_radps / kDegree_rad, 424.264, tol(1e-3));
}

// Same source: t = θ/ω + ω/α, 0.45 s for 90° at most 300°/s. Next to no resistance and no
// inductance hold the torque until the back-EMF meets the bus, e = Kt·ω/1.5 = m·V/√3.
TEST(FastestMove, WithASharpTopSpeedIsATrapezoid) {
  const double alpha = 2000 * kDegree_rad, top = 300 * kDegree_rad;
  AxisModel axis = inertia_axis(1, 0.5, 1.5 * alpha, 1);
  axis.drive.phase_resistance_ohm = 1e-9;
  axis.drive.phase_inductance_H = 0;
  axis.drive.bus_voltage_V =
      axis.drive.torque_constant_NmpA * top / 1.5 * std::sqrt(3.0) / axis.drive.modulation_limit;
  const auto move = fastest_move(axis, 90 * kDegree_rad);
  ASSERT_TRUE(move);
  EXPECT_NEAR(move->time_s, 0.45, tol(0.45 * 1e-4));
  EXPECT_NEAR(move->peak_speed_radps, top, tol(top * 1e-4));
}

// Source: Khurmi & Gupta, Theory of Machines, ex. 3.13: 75 kg on a drum of 0.3 m drives 100 kg·m²
// and, through 6:1, 5 kg·m²: 0.231 m/s² without loss and 0.216 m/s² at 90 %.
TEST(RigidTrain, DrivenByItsLoadReflectsTheRotorOverTheBackEfficiency) {
  AxisModel axis = inertia_axis(100 + 75 * 0.09, 5, 0, 6);
  const double torque_Nm = 75 * 9.81 * 0.3;
  EXPECT_NEAR(0.3 * rigid_acceleration_radps2(axis, 0, 5, torque_Nm), 0.231, tol(5e-4));
  axis.gear.back_efficiency = 0.9;
  EXPECT_NEAR(0.3 * rigid_acceleration_radps2(axis, 0, 5, torque_Nm), 0.216, tol(5e-4));
}

// Source: same, ex. 3.17: start-up to 60 rpm in 3.7 s (3.660) at 95 %.
TEST(RigidTrain, DrivenByItsMotorMultipliesTorqueAndRotorByTheEfficiency) {
  AxisModel axis = inertia_axis(45, 0.6, 30, 9);
  axis.gear.efficiency = 0.95;
  axis.load.coulomb_Nm = 100;
  const double alpha = rigid_acceleration_radps2(axis, 30, 3, 0);
  EXPECT_NEAR(2 * std::numbers::pi / alpha, 3.66, tol(1e-3));
}

// The model of section 5 with the stiffest of gears and a damper: τ from the train's own equations.
TEST(RigidTrain, MeetsBothOfItsEquations) {
  const AxisModel axis = small_axis();
  const GearTrain& gear = axis.gear;
  for (const double speed : {-20.0, -0.02, 0.004, 0.02, 8.0})
    for (const double torque : {-0.6, -0.01, 0.02, 0.6})
      for (const double gravity : {-2.0, 0.3}) {
        const double a = rigid_acceleration_radps2(axis, torque, speed, gravity);
        const auto sat = [](double x) { return std::clamp(x, -1.0, 1.0); };
        const double tau = axis.load.inertia_kgm2 * a + axis.load.coulomb_Nm * sat(speed / 0.01) +
                           axis.load.viscous_Nmsprad * speed - gravity;
        const double motor = gear.ratio * speed;
        const double loss = std::abs(tau) / gear.ratio *
                            (tau * motor >= 0 ? 1 / gear.efficiency - 1 : 1 - gear.back_efficiency);
        const double left = gear.rotor_inertia_kgm2 * gear.ratio * a;
        const double right = torque - (gear.drag_Nm + loss) * sat(motor / 0.5) -
                             gear.viscous_Nmsprad * motor - tau / gear.ratio;
        EXPECT_NEAR(left, right, tol(1e-12)) << speed << ' ' << torque << ' ' << gravity;
      }
}

/// Both ramps by classical Runge-Kutta steps of `step_s`, joined where they meet in the phase
/// plane.
double fine_time_s(const AxisModel& axis, double move_rad, double step_s) {
  using Point = std::array<double, 3>;
  const auto ramp = [&](bool rising) {
    std::vector<Point> points{{0, 0, 0}};
    const auto slope = [&](double angle, double speed) {
      const double most = axis.gear_torque_limit_Nm(), motor = speed * axis.gear.ratio;
      const TorqueRange range = torque_range(axis.drive, motor);
      const double torque =
          rising ? std::min(range.most_Nm, most) : std::max(range.least_Nm, -most);
      const double q = rising ? angle - move_rad / 2 : move_rad / 2 - angle;
      const double a = rigid_acceleration_radps2(axis, torque, speed, axis.load.gravity.at(q));
      return rising ? a : -a;
    };
    while (points.back()[1] < move_rad) {
      const auto [t, x, v] = points.back();
      const double h = step_s, a1 = slope(x, v), v2 = v + h / 2 * a1, a2 = slope(x + h / 2 * v, v2);
      const double v3 = v + h / 2 * a2, a3 = slope(x + h / 2 * v2, v3);
      const double v4 = v + h * a3, a4 = slope(x + h * v3, v4);
      points.push_back(
          {t + h, x + h / 6 * (v + 2 * v2 + 2 * v3 + v4), v + h / 6 * (a1 + 2 * a2 + 2 * a3 + a4)});
    }
    return points;
  };
  const auto up = ramp(true), down = ramp(false);
  std::size_t j = down.size() - 1;
  for (const auto& [t, x, v] : up) {
    while (j > 0 && move_rad - down[j][1] < x) --j;
    if (v >= down[j][2]) return t + down[j][0];
  }
  return -1;
}

// Converged: an independent integration in steps of 2 µs ends within a step or two of the same
// time.
TEST(FastestMove, AgreesWithAFineIntegration) {
  AxisModel heavy = small_axis(), wide = small_axis(), sluggish = small_axis();
  heavy.load.inertia_kgm2 = 0.5;
  heavy.load.gravity = {.cos_Nm = -2, .sin_Nm = 0.3, .constant_Nm = 0.1};
  wide.gear.ratio = 60;
  sluggish.drive.current_limit_A = 0.9;
  for (const AxisModel& axis : {small_axis(), heavy, wide, sluggish}) {
    const double fine = fine_time_s(axis, 0.7, 2e-6);
    EXPECT_NEAR(fastest_move(axis, 0.7).value().time_s, fine, tol(1e-4 * fine));
  }
}

TEST(FastestMove, IsEmptyWhereTorqueCannotOvercomeFrictionAndGravity) {
  AxisModel axis = small_axis();
  axis.drive.current_limit_A = 0.3;  // 18·0.02·0.3·0.9 − drag leaves less than 0.04 N·m
  EXPECT_FALSE(fastest_move(axis, 0.7));
  EXPECT_FALSE(best_time_ratio(inertia_axis(1, 1, 0, 1), 0.7));
  axis = small_axis();
  axis.load.gravity.constant_Nm = -20;
  EXPECT_FALSE(fastest_move(axis, 0.7));
  axis.load.gravity.constant_Nm = 20;  // starts by itself but cannot be stopped
  EXPECT_FALSE(fastest_move(axis, 0.7));
}

TEST(FastestMove, HasAPathFromRestToRest) {
  const auto move = fastest_move(small_axis(), 0.7);
  const auto path = fastest_move_path(small_axis(), 0.7, 101);
  ASSERT_TRUE(move && path);
  EXPECT_EQ(path->angle_rad.size(), 101u);
  EXPECT_NEAR(path->angle_rad.front(), 0, tol(1e-9));
  EXPECT_NEAR(path->angle_rad.back(), 0.7, tol(1e-9));
  EXPECT_NEAR(path->speed_radps.back(), 0, tol(1e-9));
  EXPECT_NEAR(path->time_s.back(), move->time_s, tol(1e-9));
  double angle = 0;  // the angle is the integral of the speed; trapezoids miss by h²/12·Δα, 1e-4
  for (std::size_t i = 1; i < path->time_s.size(); ++i)
    angle += (path->time_s[i] - path->time_s[i - 1]) *
             (path->speed_radps[i] + path->speed_radps[i - 1]) / 2;
  EXPECT_NEAR(angle, 0.7, tol(1e-3));
}

// Pasch & Seering, J. Mech. Transm. Autom. Des. 106 (1984) 102 (from memory): √(45/0.6) = 8.6603; a
// factor of two off costs a fifth of the acceleration, hence √(1/0.8) of the time.
TEST(BestTimeRatio, OfPureInertiasMatchesThem) {
  const AxisModel axis = inertia_axis(45, 0.6, 30, 1);
  EXPECT_NEAR(best_time_ratio(axis, 1).value(), 8.6603, tol(8.66 * 1e-4));
  const auto time = [](double ratio) {
    return fastest_move(inertia_axis(45, 0.6, 30, ratio), 1).value().time_s;
  };
  EXPECT_NEAR(time(2 * 8.6603) / time(8.6603), std::sqrt(1 / 0.8), tol(1e-5));
  EXPECT_NEAR(time(8.6603 / 2) / time(8.6603), std::sqrt(1 / 0.8), tol(1e-5));
}

TEST(BestTimeRatio, IsNoSlowerThanAnyOtherRatio) {
  AxisModel axis = small_axis();
  axis.gear.ratio = best_time_ratio(axis, 0.7).value();
  const double best = fastest_move(axis, 0.7).value().time_s;
  for (double ratio = 1; ratio <= 200; ratio *= 1.03) {
    axis.gear.ratio = ratio;
    const auto move = fastest_move(axis, 0.7);
    if (!move) continue;
    EXPECT_GE(move->time_s, best * (1 - tol(1e-5))) << ratio;
  }
}

}  // namespace
}  // namespace gazewright
