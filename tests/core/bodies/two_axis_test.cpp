#include <gtest/gtest.h>

#include <Eigen/Eigenvalues>
#include <Eigen/Geometry>

#include "core/bodies/bodies.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using Eigen::Matrix2d;
using Eigen::Matrix3d;
using Eigen::Vector2d;
using Eigen::Vector3d;
using tests::Random;

Vector3d vector_m(const std::array<Quantity, 3>& at) {
  return {at[0].value(), at[1].value(), at[2].value()};
}

/// The frames as design section 3 puts them, by rotations and not by our formulas.
struct Pose {
  Matrix3d R_BP, R_BT;
  Vector3d p_BT_m;
};
Pose pose_of(const Rig& rig, const Vector2d& q_rad) {
  Pose pose;
  pose.R_BP = Eigen::AngleAxisd(q_rad(0), Vector3d::UnitZ()).toRotationMatrix();
  pose.R_BT = pose.R_BP * Eigen::AngleAxisd(q_rad(1), -Vector3d::UnitY()).toRotationMatrix();
  pose.p_BT_m = pose.R_BP * vector_m(rig.tilt_axis_at_m);
  return pose;
}
Vector3d centre_in_B_m(const Rig& rig, const Body& body, bool on_tilt, const Vector2d& q_rad) {
  const Pose pose = pose_of(rig, q_rad);
  if (on_tilt) return pose.p_BT_m + pose.R_BT * vector_m(body.centre_m);
  return pose.R_BP * vector_m(body.centre_m);
}

/// Visits every body of the rig.
template <class Visitor>
void each_body(const Rig& rig, Visitor&& visit) {
  for (const Body& body : rig.on_pan) visit(body, false);
  for (const Body& body : rig.on_tilt) visit(body, true);
}

double potential_energy_J(const Rig& rig, const Vector2d& q_rad) {
  const Matrix3d R_WB =
      Eigen::AngleAxisd(rig.stand.lean_rad.value(), Vector3d::UnitY()).toRotationMatrix();
  double energy_J = 0;
  each_body(rig, [&](const Body& body, bool on_tilt) {
    energy_J +=
        body.mass_kg.value() * 9.80665 * (R_WB * centre_in_B_m(rig, body, on_tilt, q_rad)).z();
  });
  return energy_J;
}

/// Speeds of centres by central differences, turning speeds by the axes.
double kinetic_energy_J(const Rig& rig, const Vector2d& q_rad, const Vector2d& rate_radps) {
  const double h_s = 1e-5 / (rate_radps.norm() + 1e-300);
  const Pose pose = pose_of(rig, q_rad);
  double energy_J = 0;
  each_body(rig, [&](const Body& body, bool on_tilt) {
    const Vector3d v_mps = (centre_in_B_m(rig, body, on_tilt, q_rad + h_s * rate_radps) -
                            centre_in_B_m(rig, body, on_tilt, q_rad - h_s * rate_radps)) /
                           (2 * h_s);
    Vector3d w_radps = rate_radps(0) * Vector3d::UnitZ();
    if (on_tilt) w_radps -= rate_radps(1) * pose.R_BP * Vector3d::UnitY();
    const Matrix3d& R = on_tilt ? pose.R_BT : pose.R_BP;
    const double mass_kg = body.mass_kg.value();
    const Vector3d w_own_radps = R.transpose() * w_radps;
    energy_J += mass_kg * v_mps.squaredNorm() / 2 +
                w_own_radps.dot(inertia_about_centre_kgm2(body.shape, mass_kg) * w_own_radps) / 2;
  });
  return energy_J;
}

/// Size of the first moments: what gravity torques are measured against. [N·m]
double weight_moment_Nm(const Rig& rig) {
  double sum_Nm = 0;
  each_body(rig, [&](const Body& body, bool) {
    sum_Nm += body.mass_kg.value() * 9.80665 *
              (vector_m(body.centre_m).norm() + vector_m(rig.tilt_axis_at_m).norm());
  });
  return sum_Nm;
}

Vector2d random_pose(Random& random) {
  return {tests::random_angle_rad(random), tests::random_angle_rad(random)};
}
Vector2d random_rates(Random& random) {
  const double scale = random.log_uniform(1e-3, 1e2);
  return {random.uniform(-1, 1) * scale, random.uniform(-1, 1) * scale};
}

TEST(GravityTorque, IsMinusTheSlopeOfThePotentialEnergy) {
  Random random(81);
  const double h = 1e-5;
  double worst = 0;
  for (int round = 0; round < 500; ++round) {
    const Rig rig = tests::random_bodies_rig(random);
    const Vector2d q = random_pose(random);
    const Vector2d torque_Nm = gravity_torque_Nm(rig_bodies(rig), q(0), q(1));
    for (int i = 0; i < 2; ++i) {
      const Vector2d step = h * Vector2d::Unit(i);
      const double slope_Nm =
          (potential_energy_J(rig, q + step) - potential_energy_J(rig, q - step)) / (2 * h);
      worst = std::max(worst, std::abs(torque_Nm(i) + slope_Nm) / weight_moment_Nm(rig));
    }
  }
  // Over the weight moment: truncation h²/6 = 2e-11, rounding ten times 1.1e-16/h = 1e-10.
  EXPECT_LE(worst, tol(2e-10));
}

TEST(GravityTorque, PushesTheNoseDownWhenTheCameraIsHeavyInFront) {
  Rig rig;
  rig.on_tilt = {{"", si_quantity(0.1), {si_quantity(0.04), si_quantity(0), si_quantity(0)}, {}}};
  for (Quantity& coordinate : rig.tilt_axis_at_m) coordinate = si_quantity(0);
  rig.stand.lean_rad = si_quantity(0);
  const Vector2d torque_Nm = gravity_torque_Nm(rig_bodies(rig), 0.7, 0);
  EXPECT_EQ(torque_Nm(0), 0);
  EXPECT_NEAR(torque_Nm(1), -0.1 * 9.80665 * 0.04, tol(1e-17));
}

TEST(GravityTorque, OfAForwardLeanTurnsAHeavyLeftSideTowardsTheFront) {
  // Leaning forwards, +x of B points downhill; a mass at the left (+y) falls that way: −ψ.
  Rig rig;
  rig.on_pan = {{"", si_quantity(2), {si_quantity(0), si_quantity(0.1), si_quantity(0)}, {}}};
  for (Quantity& coordinate : rig.tilt_axis_at_m) coordinate = si_quantity(0);
  rig.stand.lean_rad = si_quantity(0.3);
  const double torque_Nm = gravity_torque_Nm(rig_bodies(rig), 0, 0)(0);
  EXPECT_NEAR(torque_Nm, -2 * 9.80665 * std::sin(0.3) * 0.1, tol(1e-15));
}

TEST(GravityCurve, IsTheTorqueOfOneAxisWithTheOtherAtRest) {
  Random random(82);
  double worst = 0;
  for (int round = 0; round < 300; ++round) {
    const Rig rig = tests::random_bodies_rig(random);
    const RigBodies bodies = rig_bodies(rig);
    const double q = tests::random_angle_rad(random);
    const double pan_Nm =
        gravity_curve(bodies, Axis::pan).at(q) - gravity_torque_Nm(bodies, q, 0)(0);
    const double tilt_Nm =
        gravity_curve(bodies, Axis::tilt).at(q) - gravity_torque_Nm(bodies, 0, q)(1);
    worst = std::max(worst, (std::abs(pan_Nm) + std::abs(tilt_Nm)) / weight_moment_Nm(rig));
  }
  EXPECT_LE(worst, tol(1e-15));  // about ten roundings of 1.1e-16
}

TEST(GravityCurve, IsTheTorqueAtAnyAngleOfTheOtherAxis) {
  Random random(84);
  for (int round = 0; round < 300; ++round) {
    const Rig rig = tests::random_bodies_rig(random);
    const RigBodies bodies = rig_bodies(rig);
    const double q = tests::random_angle_rad(random), other = tests::random_angle_rad(random);
    const double pan_Nm =
        gravity_curve(bodies, Axis::pan, other).at(q) - gravity_torque_Nm(bodies, q, other)(0);
    const double tilt_Nm =
        gravity_curve(bodies, Axis::tilt, other).at(q) - gravity_torque_Nm(bodies, other, q)(1);
    EXPECT_LE((std::abs(pan_Nm) + std::abs(tilt_Nm)) / weight_moment_Nm(rig), tol(2e-15));
  }
}

TEST(GravityCurve, IsLargestWhereAScanFindsIt) {
  Random random(85);
  for (int round = 0; round < 200; ++round) {
    const GravityCurve curve{random.uniform(-2, 2), random.uniform(-2, 2), random.uniform(-1, 1)};
    const double slope = round % 2 == 0 ? 0 : random.uniform(-3, 3);
    const double least = random.uniform(-4, 3), most = least + random.uniform(0, 15);
    double scanned = 0;
    for (int k = 0; k <= 20000; ++k) {
      const double q = least + (most - least) * k / 20000;
      scanned = std::max(scanned, std::abs(curve.at(q) + slope * q));
    }
    const double found = curve.largest_Nm(least, most, slope);
    EXPECT_GE(found, scanned * (1 - 1e-14));
    EXPECT_NEAR(found, scanned, tol(3e-7));  // 3·(7.5e-4/2)²/2 between two points of the scan
  }
}

TEST(GravityTorque, IsLargestAtATellingPoseOfTheOtherAxis) {
  Random random(86);
  for (int round = 0; round < 40; ++round) {
    const Rig rig = tests::random_bodies_rig(random);
    const RigBodies bodies = rig_bodies(rig);
    const double least = random.uniform(-3, 1), most = least + random.uniform(0, 6);
    for (const Axis axis : kAxes) {
      double found = 0, scanned = 0;
      for (const double pose : telling_poses_rad(bodies, axis, least, most))
        found = std::max(found, gravity_curve(bodies, axis, pose).largest_Nm(-0.4, 0.9));
      for (int i = 0; i <= 400; ++i) {
        const double pose = least + (most - least) * i / 400;
        for (int k = 0; k <= 100; ++k) {
          const double q = -0.4 + 1.3 * k / 100;
          scanned = std::max(scanned,
                             std::abs(axis == Axis::pan ? gravity_torque_Nm(bodies, q, pose)(0)
                                                        : gravity_torque_Nm(bodies, pose, q)(1)));
        }
      }
      const double weight = weight_moment_Nm(rig);
      EXPECT_GE(found, scanned - 1e-13 * weight);
      // Half a step of 15 mrad in one angle and of 13 mrad in the other: (7.5e-3)²/2 each.
      EXPECT_NEAR(found, scanned, tol(6e-5 * weight));
    }
  }
}

TEST(MassMatrix, IsSymmetricAndPositiveDefinite) {
  Random random(83);
  for (int round = 0; round < 1000; ++round) {
    const RigBodies bodies = rig_bodies(tests::random_bodies_rig(random));
    const Matrix2d M = mass_matrix_kgm2(bodies, tests::random_angle_rad(random));
    EXPECT_EQ(M(0, 1), M(1, 0));
    EXPECT_GT(M(0, 0), 0);
    EXPECT_GT(M.determinant(), 0);
  }
}

TEST(MassMatrix, HoldsTheKineticEnergy) {
  Random random(84);
  double worst = 0;
  for (int round = 0; round < 500; ++round) {
    const Rig rig = tests::random_bodies_rig(random);
    const Vector2d q = random_pose(random), rate = random_rates(random);
    const Matrix2d M = mass_matrix_kgm2(rig_bodies(rig), q(1));
    const double scale_J = M.trace() * rate.squaredNorm() / 2;
    worst = std::max(worst,
                     std::abs(kinetic_energy_J(rig, q, rate) - rate.dot(M * rate) / 2) / scale_J);
  }
  // Central differences over 1e-5 rad: truncation 1e-10/6, rounding ten times 1.1e-16/1e-5, twice
  // for the square.
  EXPECT_LE(worst, tol(3e-10));
}

TEST(VelocityTorque, DoesExactlyTheWorkThatTheChangingInertiaAsksFor) {
  // q̇ᵀ(C q̇) = ½ q̇ᵀ Ṁ q̇: without it energy would appear or vanish.
  Random random(85);
  const double h = 1e-5;
  double worst = 0;
  for (int round = 0; round < 500; ++round) {
    const RigBodies bodies = rig_bodies(tests::random_bodies_rig(random));
    const double tilt = tests::random_angle_rad(random);
    const Vector2d rate = random_rates(random);
    const Matrix2d slope =
        (mass_matrix_kgm2(bodies, tilt + h) - mass_matrix_kgm2(bodies, tilt - h)) / (2 * h);
    const double work_W = rate.dot(velocity_torque_Nm(bodies, tilt, rate));
    const double asked_W = rate.dot(slope * rate) * rate(1) / 2;
    const double scale_W = mass_matrix_kgm2(bodies, tilt).trace() * std::pow(rate.norm(), 3);
    worst = std::max(worst, std::abs(work_W - asked_W) / scale_W);
  }
  // Second harmonics: truncation 4h²/6·4 = 3e-10 at worst, rounding ten times 1.1e-16/h = 1e-10.
  EXPECT_LE(worst, tol(4e-10));
}

TEST(VelocityTorque, IsZeroAtRestAndGrowsWithTheSquareOfTheRates) {
  Random random(86);
  for (int round = 0; round < 100; ++round) {
    const RigBodies bodies = rig_bodies(tests::random_bodies_rig(random));
    const double tilt = tests::random_angle_rad(random);
    const Vector2d rate = random_rates(random);
    EXPECT_EQ(velocity_torque_Nm(bodies, tilt, {0, 0}), Vector2d(0, 0));
    EXPECT_EQ(velocity_torque_Nm(bodies, tilt, 2 * rate),
              4 * velocity_torque_Nm(bodies, tilt, rate));
  }
}

TEST(TwoAxis, AMirroredRigMovesLikeItsMirrorImage) {
  // y → −y: pan turns the other way, tilt does not.
  Random random(87);
  for (int round = 0; round < 200; ++round) {
    const RigBodies bodies = rig_bodies(tests::random_bodies_rig(random));
    RigBodies mirrored = bodies;
    const Matrix3d flip = Vector3d(1, -1, 1).asDiagonal();
    for (MassProperties* part : {&mirrored.on_pan, &mirrored.on_tilt}) {
      part->p_OC_m = flip * part->p_OC_m;
      part->I_O_kgm2 = flip * part->I_O_kgm2 * flip;
    }
    mirrored.p_PT_m = flip * mirrored.p_PT_m;
    const Matrix2d pan_flip = Vector2d(-1, 1).asDiagonal();
    const Vector2d q = random_pose(random), rate = random_rates(random);
    EXPECT_EQ(mass_matrix_kgm2(mirrored, q(1)),
              pan_flip * mass_matrix_kgm2(bodies, q(1)) * pan_flip);
    EXPECT_EQ(gravity_torque_Nm(mirrored, -q(0), q(1)),
              pan_flip * gravity_torque_Nm(bodies, q(0), q(1)));
    EXPECT_EQ(velocity_torque_Nm(mirrored, q(1), pan_flip * rate),
              pan_flip * velocity_torque_Nm(bodies, q(1), rate));
  }
}

}  // namespace
}  // namespace gazewright
