#include <gtest/gtest.h>
#include <mujoco/mujoco.h>

#include <cmath>

#include "tests/mujoco/mujoco_rig.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

// The terms of the two-axis rigid-body model against MuJoCo.
namespace gazewright {
namespace {

using Eigen::Matrix2d;
using Eigen::Vector2d;
using tests::Free;
using tests::mujoco_model;
using tests::Random;

/// What MuJoCo makes of a pose: M, and C q̇ − gravity.
struct Reference {
  Matrix2d mass_kgm2;
  Vector2d bias_Nm;
};
Reference reference_at(const mjModel& model, mjData& data, const Vector2d& q_rad,
                       const Vector2d& rate_radps) {
  for (int i = 0; i < 2; ++i) {
    data.qpos[i] = q_rad(i);
    data.qvel[i] = rate_radps(i);
  }
  mj_forward(&model, &data);
  double full[4];
  mj_fullM(&model, full, data.qM);
  Reference reference;
  reference.mass_kgm2 << full[0], full[1], full[2], full[3];
  reference.bias_Nm << data.qfrc_bias[0], data.qfrc_bias[1];
  return reference;
}

/// Largest differences, each over the size of what is summed there.
struct Worst {
  double mass = 0, gravity = 0, bias = 0;
};

void compare(const Rig& rig, Random& random, int poses, Worst& worst) {
  const auto model = mujoco_model(rig);
  ASSERT_TRUE(model);
  ASSERT_EQ(model->nv, 2);
  const std::unique_ptr<mjData, Free> data(mj_makeData(model.get()));
  const RigBodies bodies = rig_bodies(rig);
  const double moment_kgm =
      bodies.on_pan.mass_kg * bodies.on_pan.p_OC_m.norm() +
      bodies.on_tilt.mass_kg * (bodies.on_tilt.p_OC_m.norm() + bodies.p_PT_m.norm());
  const double gravity_Nm = moment_kgm * kStandardGravity_mps2;
  const double inertia_kgm2 = bodies.on_pan.I_O_kgm2.norm() + bodies.on_tilt.I_O_kgm2.norm() +
                              bodies.on_tilt.mass_kg * bodies.p_PT_m.squaredNorm();
  for (int pose = 0; pose < poses; ++pose) {
    const Vector2d q{tests::random_angle_rad(random), tests::random_angle_rad(random)};
    const double fast_radps = random.log_uniform(0.01, 100);
    const Vector2d rate{random.uniform(-1, 1) * fast_radps, random.uniform(-1, 1) * fast_radps};

    const Vector2d gravity = gravity_torque_Nm(bodies, q(0), q(1));
    const Reference still = reference_at(*model, *data, q, {0, 0});
    worst.gravity =
        std::max(worst.gravity, (still.bias_Nm + gravity).cwiseAbs().maxCoeff() / gravity_Nm);

    const Reference moving = reference_at(*model, *data, q, rate);
    const Matrix2d M = mass_matrix_kgm2(bodies, q(1));
    worst.mass = std::max(worst.mass, (moving.mass_kgm2 - M).cwiseAbs().maxCoeff() / inertia_kgm2);
    const Vector2d bias_Nm = velocity_torque_Nm(bodies, q(1), rate) - gravity;
    worst.bias = std::max(worst.bias, (moving.bias_Nm - bias_Nm).cwiseAbs().maxCoeff() /
                                          (gravity_Nm + inertia_kgm2 * rate.squaredNorm()));
  }
}

TEST(TwoAxisModel, AgreesWithMuJoCoOnThreeHundredRandomRigs) {
  Random random(2026);
  Worst worst;
  for (int round = 0; round < 300; ++round)
    compare(tests::random_bodies_rig(random), random, 10, worst);
  // Two ways to the same sums of a few hundred terms: rounding only. TOL_SCALE=0 prints the
  // residuals, about 1e-15.
  EXPECT_LE(worst.mass, tol(2e-14));
  EXPECT_LE(worst.gravity, tol(2e-14));
  EXPECT_LE(worst.bias, tol(2e-14));
}

}  // namespace
}  // namespace gazewright
