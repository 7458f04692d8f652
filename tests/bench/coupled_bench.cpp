// Both axes at once, per step of 1/8000 s, as the mean of 4800 steps from rest through the task
// moves; beside mujoco_step of the same rig.
// `coupled_step`: one control sample of everything: both controllers, drives on one supply, gears
//   with gap and friction, the rigid two-axis rig, a row of the trace.
// `rigid_step`: what mj_step does: the two-axis rig alone under given torques, of order 4.
#include <benchmark/benchmark.h>

#include "core/files/rig_file.h"
#include "core/motion/coupled.h"
#include "core/rig/fields.h"

namespace gazewright {
namespace {

constexpr int kSteps = 4800;

Rig sample() {
  return with_defaults(
      load_rig(GAZEWRIGHT_SOURCE_DIR "/sample-rigs/quick-newt.rig.yaml").rig.value());
}

void coupled_step(benchmark::State& state) {
  const Rig rig = sample();
  const CoupledModel model = coupled_model(rig);
  const PanTilt move_rad{rig.task.pan_move_rad.value(), rig.task.tilt_move_rad.value()};
  while (state.KeepRunningBatch(kSteps))
    benchmark::DoNotOptimize(simulate_both(model, move_rad, kSteps / 8000.0));
}
BENCHMARK(coupled_step);

void rigid_step_alone(benchmark::State& state) {
  const TwoAxisEquations equations(rig_bodies(sample()));
  while (state.KeepRunningBatch(kSteps)) {
    RigidState at;
    for (int step = 0; step < kSteps; ++step)
      at = rigid_step(equations, at,
                      {step % 400 < 200 ? 0.02 : -0.02, step % 300 < 150 ? 0.01 : -0.01},
                      1.0 / 8000);
    benchmark::DoNotOptimize(at);
  }
}
BENCHMARK(rigid_step_alone)->Name("rigid_step");

}  // namespace
}  // namespace gazewright
