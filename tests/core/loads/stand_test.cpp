#include "core/loads/stand.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <vector>

#include "core/bodies/bodies.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

constexpr double kG = kStandardGravity_mps2;

/// A point of 1 kg over the pan axis, 0.3 m up.
RigBodies tall_point() {
  RigBodies bodies;
  bodies.on_pan.mass_kg = 1;
  bodies.on_pan.p_OC_m = {0, 0, 0.3};
  bodies.on_pan.I_O_kgm2.diagonal() << 0.09, 0.09, 0;
  return bodies;
}

TEST(StandTipping, LevelItIsHeldByItsWeightAtHalfItsWidth) {
  const StandBody stand{3, 0.1, 0.2};
  const CarriedByStand carried = carried_by(stand, tall_point());
  EXPECT_DOUBLE_EQ(carried.above_foot_m, 0.5);
  EXPECT_EQ(carried.aside_m, 0);
  const Tipping tip = tipping_of(stand, carried, 0);
  EXPECT_NEAR(tip.holding_Nm, 4 * kG * 0.1, tol(1e-12));
  EXPECT_EQ(tip.resting_Nm, 0);
  // Own centre at 0.1 m, load at 0.5 m: over the edge at atan(4·0.1/(3·0.1 + 1·0.5)).
  EXPECT_NEAR(tip.lean_rad, std::atan(0.4 / 0.8), tol(1e-12));
}

TEST(StandTipping, AtTheLeanWhereItTipsBothMomentsAreTheSame) {
  tests::Random random(41);
  for (int i = 0; i < 200; ++i) {
    const RigBodies bodies = rig_bodies(tests::random_bodies_rig(random));
    const StandBody stand{random.log_uniform(0.1, 100), random.log_uniform(0.02, 1),
                          random.log_uniform(0.02, 2)};
    const CarriedByStand carried = carried_by(stand, bodies);
    const double lean = tipping_of(stand, carried, 0).lean_rad;
    ASSERT_TRUE(std::isfinite(lean));
    if (lean < 0 || carried.above_foot_m <= 0) continue;  // it does not even stand
    const Tipping there = tipping_of(stand, carried, lean);
    EXPECT_NEAR(there.resting_Nm / there.holding_Nm, 1, tol(1e-9)) << i;
  }
}

TEST(StandTipping, TheLoadIsTakenInItsWorstPose) {
  RigBodies bodies = tall_point();
  bodies.on_tilt.mass_kg = 1;
  bodies.on_tilt.p_OC_m = {0.03, 0, 0.04};  // swings on 50 mm
  bodies.p_PT_m = {0.02, 0, 0.3};
  const CarriedByStand carried = carried_by({3, 0.1, 0.2}, bodies);
  EXPECT_NEAR(carried.aside_m, (0.02 + 0.05) / 2, tol(1e-15));
  EXPECT_NEAR(carried.above_foot_m, 0.2 + (0.3 + 0.3 + 0.05) / 2, tol(1e-15));
}

TEST(StandSway, InertiaIsThatOfPointsAndAColumnAboutTheFoot) {
  const SwayInertia sway = sway_inertia({3, 0.1, 0.2}, tall_point());
  EXPECT_NEAR(sway.pitch_kgm2, 0.25 + 3 * 0.04 / 3, tol(1e-12));
  EXPECT_NEAR(sway.most_kgm2, sway.pitch_kgm2, tol(1e-12));
}

TEST(StandSway, OfBodiesIsTheSameAsThatOfABodyGivenAboutTheFoot) {
  tests::Random random(42);
  for (int i = 0; i < 100; ++i) {
    const Rig rig = tests::random_bodies_rig(random);
    std::vector<Body> all = rig.on_pan;
    for (Body body : rig.on_tilt) {
      for (std::size_t k = 0; k < 3; ++k)
        body.centre_m[k] = si_quantity(body.centre_m[k].value() + rig.tilt_axis_at_m[k].value());
      all.push_back(body);
    }
    for (Body& body : all) body.centre_m[2] = si_quantity(body.centre_m[2].value() + 0.4);
    const Eigen::Matrix3d foot = combined(all).I_O_kgm2;
    EXPECT_NEAR(sway_inertia({0, 0.1, 0.4}, rig_bodies(rig)).pitch_kgm2 / foot(1, 1), 1, tol(1e-9));
  }
}

TEST(StandSway, ATorqueThatComesAtOnceSwingsOverByTheOvershootOfItsDamping) {
  // Closed form: largest T/k·(1 + exp(−πζ/√(1−ζ²))), then it dies with exp(−ζωt).
  const SwaySpring spring{0.05, 900, 0.1};
  const double w = std::sqrt(900 / 0.05), wd = w * std::sqrt(1 - 0.01);
  const double sample = 2 * std::numbers::pi / wd / 2000;
  const std::vector<double> torque(6000, 2.0);
  const Swayed swayed = swayed_by(spring, torque, sample, 1e9);
  const double over = 1 + std::exp(-std::numbers::pi * 0.1 / std::sqrt(1 - 0.01));
  EXPECT_NEAR(swayed.largest_rad, 2.0 / 900 * over, tol(2.0 / 900 * 2e-6));
  EXPECT_NEAR(spring.frequency_Hz(), w / (2 * std::numbers::pi), tol(1e-9));
}

TEST(StandSway, AfterAPulseItSwingsWithWhatTheDampingLeaves) {
  const SwaySpring spring{0.05, 900, 0.03};
  const double w = std::sqrt(900 / 0.05), wd = w * std::sqrt(1 - 0.0009), sample = 1e-5;
  std::vector<double> torque(100000, 0.0);
  torque[0] = 1000;  // 0.01 N·m·s
  const double at = 0.5;
  const double expected = 0.01 / 0.05 / wd * std::exp(-0.03 * w * at);
  EXPECT_NEAR(swayed_by(spring, torque, sample, at).left_rad / expected, 1, tol(1e-3));
}

TEST(StandSway, IsEmptyForNoTorqueAtAll) {
  const Swayed swayed = swayed_by({0.05, 900, 0.03}, {}, 1e-4, 0);
  EXPECT_EQ(swayed.largest_rad, 0);
  EXPECT_EQ(swayed.left_rad, 0);
}

}  // namespace
}  // namespace gazewright
