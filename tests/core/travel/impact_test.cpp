#include "core/travel/impact.h"

#include <gtest/gtest.h>

#include <Eigen/Eigenvalues>
#include <array>
#include <cmath>
#include <numbers>

#include "core/motion/rigid_move.h"
#include "tests/core/motion/small_axis.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::Random;

struct Case {
  StopSpring stop;
  SprungTrain train;
  double speed_radps, push_Nm;
  double inertia_kgm2() const { return train.load_kgm2 + train.rotor_kgm2; }
};

/// From a puppet's eye to a searchlight.
Case random_case(Random& random) {
  Case c{};
  c.stop.stiffness_Nmprad = random.log_uniform(20, 5000);
  c.stop.bumper_travel_rad = random.log_uniform(0.002, 0.2);
  c.stop.hard_stiffness_Nmprad = c.stop.stiffness_Nmprad * random.log_uniform(1.5, 30);
  c.train = {random.log_uniform(1e-4, 1), random.log_uniform(1e-4, 1),
             random.log_uniform(100, 20000)};
  c.speed_radps = random.log_uniform(0.3, 30);
  c.push_Nm = random.chance(0.3) ? 0 : random.log_uniform(0.1, 50);
  return c;
}

double torque_at(const StopSpring& stop, double press_rad) {
  if (press_rad <= stop.bumper_travel_rad) return stop.stiffness_Nmprad * press_rad;
  return stop.stiffness_Nmprad * stop.bumper_travel_rad +
         stop.hard_stiffness_Nmprad * (press_rad - stop.bumper_travel_rad);
}
double energy_at(const StopSpring& stop, double press_rad) {
  const double soft = std::min(press_rad, stop.bumper_travel_rad);
  return stop.stiffness_Nmprad * soft * soft / 2 +
         (press_rad - soft) * (torque_at(stop, soft) + torque_at(stop, press_rad)) / 2;
}

TEST(Impact, OfOneStageHasItsClosedForm) {
  const Impact dead = impact_of({.stiffness_Nmprad = 400}, 0.02, 12, 0);
  EXPECT_DOUBLE_EQ(dead.torque_Nm, 12 * std::sqrt(400 * 0.02));
  EXPECT_DOUBLE_EQ(dead.press_rad, 12 * std::sqrt(0.02 / 400));
  EXPECT_FALSE(dead.bottoms_out);
  const Impact pushed = impact_of({.stiffness_Nmprad = 400}, 0.02, 12, 5);
  EXPECT_DOUBLE_EQ(pushed.torque_Nm, 5 + std::sqrt(25 + 400 * 0.02 * 144));
  // A torque laid on at rest presses twice as deep as one that is eased on.
  EXPECT_DOUBLE_EQ(impact_of({.stiffness_Nmprad = 400}, 0.02, 0, 5).torque_Nm, 10);
}

TEST(Impact, OfTwoStagesBalancesItsEnergy) {
  Random random(3);
  int bottomed = 0;
  for (int i = 0; i < 500; ++i) {
    const Case c = random_case(random);
    const Impact impact = impact_of(c.stop, c.inertia_kgm2(), c.speed_radps, c.push_Nm);
    bottomed += impact.bottoms_out;
    EXPECT_EQ(impact.bottoms_out, impact.press_rad > c.stop.bumper_travel_rad);
    EXPECT_NEAR(torque_at(c.stop, impact.press_rad) / impact.torque_Nm, 1, tol(1e-9));
    const double brought_J = c.inertia_kgm2() * c.speed_radps * c.speed_radps / 2;
    EXPECT_NEAR(energy_at(c.stop, impact.press_rad) / (brought_J + c.push_Nm * impact.press_rad), 1,
                tol(1e-9));
  }
  EXPECT_GT(bottomed, 50);
  EXPECT_LT(bottomed, 450);
}

TEST(Impact, GrowsWithSpeedInertiaPushAndHardnessAndNeverJumps) {
  Random random(4);
  for (int i = 0; i < 200; ++i) {
    const Case c = random_case(random);
    const auto torque = [&](double inertia, double speed, double push) {
      return impact_of(c.stop, inertia * c.inertia_kgm2(), speed * c.speed_radps, push * c.push_Nm)
          .torque_Nm;
    };
    const double now = torque(1, 1, 1);
    EXPECT_GT(torque(1.1, 1, 1), now);
    EXPECT_GT(torque(1, 1.1, 1), now);
    EXPECT_GE(torque(1, 1, 1.1), now);
    EXPECT_LE(torque(1, 1, 0), now) << "drive dead";
    StopSpring soft = c.stop;
    soft.bumper_travel_rad = kInfinity;
    EXPECT_GE(now,
              impact_of(soft, c.inertia_kgm2(), c.speed_radps, c.push_Nm).torque_Nm * (1 - 1e-12))
        << "a bumper that ends is never gentler";
    EXPECT_NEAR(torque(1, 1 + 1e-9, 1) / now, 1, 1e-7);
  }
}

/// A second method: load, rotor and both springs in Runge-Kutta steps of order 4. With `gear` at
/// infinity both are one body.
struct Peaks {
  double stop_Nm = 0, gear_Nm = 0;
};
Peaks simulated(const Case& c, double dt, double until_s) {
  using State = std::array<double, 4>;  // load, rotor, and their speeds
  const bool rigid = std::isinf(c.train.gear_stiffness_Nmprad);
  const auto slope = [&](const State& s) -> State {
    const double stop = s[0] > 0 ? torque_at(c.stop, s[0]) : 0;
    if (rigid) {
      const double a = (c.push_Nm - stop) / c.inertia_kgm2();
      return {s[2], s[3], a, a};
    }
    const double gear = c.train.gear_stiffness_Nmprad * (s[1] - s[0]);
    return {s[2], s[3], (gear - stop) / c.train.load_kgm2, (c.push_Nm - gear) / c.train.rotor_kgm2};
  };
  const auto plus = [](const State& s, double h, const State& d) {
    return State{s[0] + h * d[0], s[1] + h * d[1], s[2] + h * d[2], s[3] + h * d[3]};
  };
  const double wound =
      rigid ? 0 : c.push_Nm * c.train.load_kgm2 / c.inertia_kgm2() / c.train.gear_stiffness_Nmprad;
  State s{0, wound, c.speed_radps, c.speed_radps};
  Peaks peaks;
  for (double t = 0; t < until_s; t += dt) {
    const State a = slope(s), b = slope(plus(s, dt / 2, a)), d = slope(plus(s, dt / 2, b));
    const State e = slope(plus(s, dt, d));
    s = plus(plus(plus(plus(s, dt / 6, a), dt / 3, b), dt / 3, d), dt / 6, e);
    if (s[0] > 0) peaks.stop_Nm = std::max(peaks.stop_Nm, torque_at(c.stop, s[0]));
    peaks.gear_Nm = std::max(peaks.gear_Nm, rigid ? c.push_Nm - c.train.rotor_kgm2 * slope(s)[2]
                                                  : c.train.gear_stiffness_Nmprad * (s[1] - s[0]));
  }
  return peaks;
}

TEST(Impact, IsThatOfASimulatedAxisHittingTheSpring) {
  Random random(5);
  for (int i = 0; i < 60; ++i) {
    Case c = random_case(random);
    c.train.gear_stiffness_Nmprad = kInfinity;
    const double slow_s =
        2 * std::numbers::pi * std::sqrt(c.inertia_kgm2() / c.stop.stiffness_Nmprad);
    const Peaks peaks = simulated(c, slow_s / 40000, slow_s);
    const Impact impact = impact_of(c.stop, c.inertia_kgm2(), c.speed_radps, c.push_Nm);
    // Hard stage at most √30 quicker: 7300 steps a turn of it; the peak hides (π/7300)²/2 = 1e-7,
    // the kink at the bumper's end costs (2π/7300)² = 7e-7.
    EXPECT_NEAR(peaks.stop_Nm / impact.torque_Nm, 1, tol(3e-6));
    const double gear_Nm =
        gear_torque_Nm(impact.torque_Nm, c.push_Nm, c.train.load_kgm2, c.train.rotor_kgm2);
    EXPECT_NEAR(peaks.gear_Nm / gear_Nm, 1, tol(3e-6));
  }
}

/// Rates of the pressed train with the bumper's stiffness, slow and fast.
Eigen::Vector2d rates_radps(const Case& c) {
  const double k = c.stop.stiffness_Nmprad, g = c.train.gear_stiffness_Nmprad;
  Eigen::Matrix2d stiffness, inertia = Eigen::Matrix2d::Zero();
  stiffness << k + g, -g, -g, g;
  inertia.diagonal() << c.train.load_kgm2, c.train.rotor_kgm2;
  return Eigen::GeneralizedSelfAdjointEigenSolver<Eigen::Matrix2d>(stiffness, inertia)
      .eigenvalues()
      .cwiseSqrt();
}

TEST(SprungImpact, IsThatOfTwoSimulatedInertiasWithBothSprings) {
  Random random(6);
  int compared = 0;
  for (int i = 0; i < 60; ++i) {
    const Case c = random_case(random);
    const auto sprung = sprung_impact(c.stop, c.train, c.speed_radps, c.push_Nm, 1);
    if (!sprung) continue;
    ++compared;
    const Eigen::Vector2d rates = rates_radps(c);
    const double until_s = 1.5 * std::numbers::pi / rates[0];
    const Peaks peaks = simulated(c, 1 / rates[1] / 500, until_s);
    // The hidden part of the peak is 3e-4; where the load knocks several times its kinks add up.
    EXPECT_NEAR(sprung->stop_torque_Nm / peaks.stop_Nm, 1, tol(1e-3)) << i;
    EXPECT_NEAR(sprung->gear_torque_Nm / peaks.gear_Nm, 1, tol(1e-3)) << i;
  }
  EXPECT_GT(compared, 30);
}

TEST(SprungImpact, HasTheTwoModesOfItsEquations) {
  // Equal inertias and springs: rates ω√((3 ∓ √5)/2); closed form of both swings.
  const double k = 500, J = 0.01, speed = 8, w = std::sqrt(k / J);
  const auto sprung = sprung_impact({.stiffness_Nmprad = k}, {J, J, k}, speed, 0, 1);
  ASSERT_TRUE(sprung);
  const double golden = std::numbers::phi;
  const double slow = w / golden, fast = w * golden;
  double stop_Nm = 0, gear_Nm = 0;
  for (double t = 0; t < 0.05; t += 1e-6) {
    // Shapes (1, φ) and (φ, −1) of (load, rotor), norm² = 1 + φ².
    const double norm = 1 + golden * golden;
    const double p = speed * (1 + golden) / norm / slow * std::sin(slow * t);
    const double q = speed * (golden - 1) / norm / fast * std::sin(fast * t);
    const double load = p + golden * q, rotor = golden * p - q;
    if (load < 0) break;
    stop_Nm = std::max(stop_Nm, k * load);
    gear_Nm = std::max(gear_Nm, k * (rotor - load));
  }
  EXPECT_NEAR(sprung->stop_torque_Nm / stop_Nm, 1, tol(4e-4));
  EXPECT_GE(sprung->gear_torque_Nm, gear_Nm * (1 - 4e-4));
}

TEST(SprungImpact, TendsToTheRigidTrainAsTheGearStiffens) {
  const Case c{{.stiffness_Nmprad = 100}, {0.004, 0.01, 100}, 9, 6};
  const Impact rigid = impact_of(c.stop, c.inertia_kgm2(), c.speed_radps, c.push_Nm);
  const double gear_Nm =
      gear_torque_Nm(rigid.torque_Nm, c.push_Nm, c.train.load_kgm2, c.train.rotor_kgm2);
  double last = 1;
  for (const double stiffer : {5.0, 50.0, 500.0}) {
    SprungTrain train = c.train;
    train.gear_stiffness_Nmprad *= stiffer;
    const auto sprung = sprung_impact(c.stop, train, c.speed_radps, c.push_Nm, 1);
    ASSERT_TRUE(sprung) << stiffer;
    const double off = std::abs(sprung->gear_torque_Nm / gear_Nm - 1);
    EXPECT_LT(off, last / 2) << stiffer;  // falls as 1/√stiffness
    last = off;
  }
  EXPECT_LT(last, 0.05);
}

TEST(SprungImpact, NeverExceedsTheEnergyThatAHardStopLeaves) {
  Random random(8);
  int compared = 0;
  for (int i = 0; i < 60; ++i) {
    Case c = random_case(random);
    c.train.gear_stiffness_Nmprad = random.log_uniform(50, 500);
    c.stop = {.stiffness_Nmprad = c.train.gear_stiffness_Nmprad * 300};
    const double rebound = random.uniform(0, 1);
    const auto sprung = sprung_impact(c.stop, c.train, c.speed_radps, 0, rebound);
    if (!sprung) continue;
    ++compared;
    // A stop 300 times as stiff is not quite hard: what it holds while the gear winds is 1/17 of
    // the speed off at most.
    EXPECT_LE(sprung->gear_torque_Nm,
              1.06 * gear_torque_at_hard_stop_Nm(c.train, c.speed_radps, rebound));
  }
  EXPECT_GT(compared, 20);
  // Nothing given back and a heavy rotor: it winds the gear against a load that stands.
  const SprungTrain train{0.002, 0.02, 200};
  const auto dead = sprung_impact({.stiffness_Nmprad = 40000}, train, 5, 0, 0);
  ASSERT_TRUE(dead);
  EXPECT_NEAR(dead->gear_torque_Nm / (5 * std::sqrt(200 * 0.02)), 1, tol(0.05));
}

TEST(SprungImpact, IsLeftToTheRigidTrainWhereStiffnessesAreWorldsApart) {
  EXPECT_FALSE(sprung_impact({.stiffness_Nmprad = 1}, {1e-4, 1, 1e6}, 5, 0, 0.5));
  EXPECT_FALSE(sprung_impact({.stiffness_Nmprad = 1e9}, {1e-3, 1e-3, 10}, 5, 0, 0.5));
}

}  // namespace
}  // namespace gazewright
