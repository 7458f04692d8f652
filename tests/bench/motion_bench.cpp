#include <benchmark/benchmark.h>

#include "core/motion/rigid_move.h"
#include "core/motion/step.h"
#include "tests/core/motion/small_axis.h"

namespace gazewright {
namespace {

/// 0.6 s of one axis: 4800 samples at 8 kHz.
void axis_step(benchmark::State& state) {
  const AxisModel axis = tests::small_axis();
  for (auto _ : state) benchmark::DoNotOptimize(simulate_step(axis, 0.7, 0.6));
}
BENCHMARK(axis_step)->Unit(benchmark::kMicrosecond);

void fastest_move_time(benchmark::State& state) {
  const AxisModel axis = tests::small_axis();
  for (auto _ : state) benchmark::DoNotOptimize(fastest_move(axis, 0.7));
}
BENCHMARK(fastest_move_time)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace gazewright
