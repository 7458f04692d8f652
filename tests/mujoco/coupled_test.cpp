#include "core/motion/coupled.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/mujoco/mujoco_rig.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

// Accelerations and whole moves of the two-axis rig under torques at both axes against MuJoCo.
namespace gazewright {
namespace {

using Eigen::Vector2d;
using tests::Free;
using tests::Random;

/// A pose and its torques, with the speeds and torques of the size that the rig calls for.
struct Moment {
  Vector2d angle_rad, rate_radps, torque_Nm;
};
Moment random_moment(Random& random, const RigBodies& bodies) {
  const double fast_radps = random.log_uniform(0.01, 100);
  const double wanted_radps2 = random.log_uniform(1, 1000);
  Moment moment;
  for (int axis = 0; axis < 2; ++axis) {
    moment.angle_rad[axis] = tests::random_angle_rad(random);
    moment.rate_radps[axis] = random.uniform(-1, 1) * fast_radps;
  }
  const auto M = mass_matrix_kgm2(bodies, moment.angle_rad[1]);
  moment.torque_Nm = M.diagonal() * wanted_radps2 * random.uniform(-1, 1);
  return moment;
}

Vector2d mujoco_radps2(const mjModel& model, mjData& data, const Moment& moment) {
  for (int i = 0; i < 2; ++i) {
    data.qpos[i] = moment.angle_rad[i];
    data.qvel[i] = moment.rate_radps[i];
    data.qfrc_applied[i] = moment.torque_Nm[i];
  }
  mj_forward(&model, &data);
  return {data.qacc[0], data.qacc[1]};
}

/// How much a solution with M blows up rounding: the condition of M with both axes scaled alike.
double condition(const RigBodies& bodies, double tilt_rad) {
  const auto M = mass_matrix_kgm2(bodies, tilt_rad);
  const double cosine = M(0, 1) / std::sqrt(M(0, 0) * M(1, 1));
  return 2 / (1 - cosine * cosine);
}

TEST(CoupledRig, AcceleratesAsInMuJoCoOnTwoHundredRandomRigs) {
  Random random(2027);
  double worst = 0;
  for (int round = 0; round < 200; ++round) {
    const Rig rig = tests::random_bodies_rig(random);
    const auto model = tests::mujoco_model(rig);
    ASSERT_TRUE(model);
    const std::unique_ptr<mjData, Free> data(mj_makeData(model.get()));
    const RigBodies bodies = rig_bodies(rig);
    for (int pose = 0; pose < 10; ++pose) {
      const Moment moment = random_moment(random, bodies);
      if (condition(bodies, moment.angle_rad[1]) > 1e5) continue;  // hardly any inertia one way
      const Vector2d theirs = mujoco_radps2(*model, *data, moment);
      const Vector2d ours =
          rigid_acceleration_radps2(bodies, moment.angle_rad, moment.rate_radps, moment.torque_Nm);
      worst = std::max(worst, (ours - theirs).norm() / theirs.norm());
    }
  }
  // Rounding of 1e-15 of the torques summed, times a condition of up to 1e5.
  EXPECT_LE(worst, tol(1e-9));
}

/// Torque of one axis over time: three sines of its own.
struct Torques {
  double size_Nm[2], rate_radps[3], phase_rad[3];
  double at(int axis, double time_s) const {
    double sum = 0;
    for (int k = 0; k < 3; ++k)
      sum += std::sin(rate_radps[k] * time_s + phase_rad[k] + 1.3 * axis) / (k + 1);
    return size_Nm[axis] * sum;
  }
};

// Both integrate with steps of order 4 and the torque held over each step: 0.3 s in 3000 steps.
TEST(CoupledRig, MovesAsInMuJoCoUnderTheSameTorques) {
  Random random(2028);
  double worst = 0;
  for (int round = 0; round < 40; ++round) {
    const Rig rig = tests::random_bodies_rig(random);
    const RigBodies bodies = rig_bodies(rig);
    if (condition(bodies, 0) > 1e3) continue;
    const auto model = tests::mujoco_model(rig);
    ASSERT_TRUE(model);
    model->opt.integrator = mjINT_RK4;
    model->opt.timestep = 1e-4;
    const std::unique_ptr<mjData, Free> data(mj_makeData(model.get()));
    const auto M = mass_matrix_kgm2(bodies, 0);
    Torques torques{};
    for (int axis = 0; axis < 2; ++axis) torques.size_Nm[axis] = 60 * M(axis, axis);
    for (int k = 0; k < 3; ++k) {
      torques.rate_radps[k] = random.uniform(2, 30);
      torques.phase_rad[k] = tests::random_angle_rad(random);
    }
    const TwoAxisEquations equations(bodies);
    RigidState state;
    double farthest_rad = 0, most_rad = 0;
    for (int step = 0; step < 3000; ++step) {
      const PanTilt torque{torques.at(0, step * 1e-4), torques.at(1, step * 1e-4)};
      state = rigid_step(equations, state, torque, 1e-4);
      data->qfrc_applied[0] = torque.pan;
      data->qfrc_applied[1] = torque.tilt;
      mj_step(model.get(), data.get());
      const Vector2d off(state.angle_rad.pan - data->qpos[0], state.angle_rad.tilt - data->qpos[1]);
      most_rad = std::max(most_rad, off.cwiseAbs().maxCoeff());
      farthest_rad = std::max({farthest_rad, std::abs(data->qpos[0]), std::abs(data->qpos[1])});
    }
    ASSERT_GT(farthest_rad, 0.1) << round;
    worst = std::max(worst, most_rad / farthest_rad);
  }
  EXPECT_LE(worst, tol(1e-4));
}

}  // namespace
}  // namespace gazewright
