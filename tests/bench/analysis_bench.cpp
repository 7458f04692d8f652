#include <benchmark/benchmark.h>

#include "core/analysis/analysis.h"
#include "core/analysis/sweep.h"
#include "core/files/rig_file.h"

// `analyse`: figures and findings of one rig, as on every frame of a drag.
// `analyse_with_remedies`: the same with remedies solved and the swap, as after a drag.
// `ratio_sweep`: 200 ratios of both axes, each a closed-loop simulation of 0.4 s at 8 kHz.
namespace gazewright {
namespace {

Rig sample() {
  return load_rig(GAZEWRIGHT_SOURCE_DIR "/sample-rigs/quick-newt.rig.yaml").rig.value();
}

void analyse_figures(benchmark::State& state) {
  const Rig rig = sample();
  for (auto _ : state) benchmark::DoNotOptimize(analyse(rig, {.quick = true}));
}
BENCHMARK(analyse_figures)->Name("analyse")->Unit(benchmark::kMillisecond);

void analyse_with_remedies(benchmark::State& state) {
  const Rig rig = sample();
  for (auto _ : state) benchmark::DoNotOptimize(analyse(rig));
}
BENCHMARK(analyse_with_remedies)->Unit(benchmark::kMillisecond);

void ratio_sweep(benchmark::State& state) {
  const Rig rig = sample();
  const auto ratios = usual_ratios(200);
  for (auto _ : state) {
    for (const Axis axis : kAxes) benchmark::DoNotOptimize(sweep_ratio(rig, axis, ratios));
  }
}
BENCHMARK(ratio_sweep)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace gazewright
