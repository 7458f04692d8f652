// MuJoCo on the rig of coupled_step: what a step of 1/8000 s costs, as the mean of 4800.
// `mujoco_step`: mj_step of two hinges, each body of the rig a body welded to its carrier, with a
//   motor torque at either axis; no contacts.
// `mujoco_step_fused`: the same with all bodies of an axis made one.
#include <benchmark/benchmark.h>

#include "core/files/rig_file.h"
#include "tests/mujoco/mujoco_rig.h"

namespace gazewright {
namespace {

constexpr int kSteps = 4800;

void run(benchmark::State& state, const Rig& rig) {
  const auto model = tests::mujoco_model(rig);
  model->opt.timestep = 1.0 / 8000;
  const std::unique_ptr<mjData, tests::Free> data(mj_makeData(model.get()));
  while (state.KeepRunningBatch(kSteps)) {
    mj_resetData(model.get(), data.get());
    for (int step = 0; step < kSteps; ++step) {
      data->qfrc_applied[0] = step % 400 < 200 ? 0.02 : -0.02;
      data->qfrc_applied[1] = step % 300 < 150 ? 0.01 : -0.01;
      mj_step(model.get(), data.get());
    }
    benchmark::DoNotOptimize(data->qpos[0]);
  }
}

Rig sample() {
  return load_rig(GAZEWRIGHT_SOURCE_DIR "/sample-rigs/quick-newt.rig.yaml").rig.value();
}

/// All bodies of a group as one.
std::vector<Body> fused(const std::vector<Body>& bodies) {
  const MassProperties all = combined(bodies);
  const Eigen::Matrix3d I =
      all.I_O_kgm2 - all.mass_kg * (all.p_OC_m.squaredNorm() * Eigen::Matrix3d::Identity() -
                                    all.p_OC_m * all.p_OC_m.transpose());
  Body one;
  one.mass_kg = si_quantity(all.mass_kg);
  for (int i = 0; i < 3; ++i)
    one.centre_m[static_cast<std::size_t>(i)] = si_quantity(all.p_OC_m[i]);
  one.shape = Tensor{{si_quantity(I(0, 0)), si_quantity(I(1, 1)), si_quantity(I(2, 2)),
                      si_quantity(I(0, 1)), si_quantity(I(0, 2)), si_quantity(I(1, 2))}};
  return {one};
}

void mujoco_step(benchmark::State& state) { run(state, sample()); }
BENCHMARK(mujoco_step);

void mujoco_step_fused(benchmark::State& state) {
  Rig rig = sample();
  rig.on_pan = fused(rig.on_pan);
  rig.on_tilt = fused(rig.on_tilt);
  run(state, rig);
}
BENCHMARK(mujoco_step_fused);

}  // namespace
}  // namespace gazewright
