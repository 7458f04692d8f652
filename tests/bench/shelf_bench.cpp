#include <benchmark/benchmark.h>

#include "core/files/rig_file.h"
#include "core/shelf/fit.h"

// `shelf_rank`: 10,000 combinations of ten motors and ten gearboxes on both axes of a sample rig,
// the best five simulated in full, on two threads. Aim: under 2 s.
// `shelf_rank_only`: the same without the simulations.
namespace gazewright {
namespace {

void rank(benchmark::State& state, std::size_t simulated) {
  const Rig rig = load_rig(GAZEWRIGHT_SOURCE_DIR "/sample-rigs/quick-newt.rig.yaml").rig.value();
  const Shelf shelf = built_in_shelf();
  std::size_t combinations = 0;
  for (auto _ : state) combinations = rank_fits(rig, shelf, {.simulated = simulated}).combinations;
  state.counters["combinations"] = static_cast<double>(combinations);
}
void shelf_rank(benchmark::State& state) { rank(state, 5); }
void shelf_rank_only(benchmark::State& state) { rank(state, 0); }
BENCHMARK(shelf_rank)->Unit(benchmark::kMillisecond)->UseRealTime()->MeasureProcessCPUTime();
BENCHMARK(shelf_rank_only)->Unit(benchmark::kMillisecond)->UseRealTime()->MeasureProcessCPUTime();

}  // namespace
}  // namespace gazewright
