#include <benchmark/benchmark.h>

#include "core/analysis/doubts.h"
#include "core/files/rig_file.h"

// `doubts`: which input of a sample rig is worth measuring, two quick analyses for each that is in
// doubt, on two threads. Aim: under 1 s.
namespace gazewright {
namespace {

void doubts(benchmark::State& state, const char* name) {
  const Rig rig =
      load_rig(GAZEWRIGHT_SOURCE_DIR "/sample-rigs/" + std::string(name) + ".rig.yaml").rig.value();
  const Analysis analysis = analyse(rig, {.remedies = false});
  std::size_t unknowns = 0;
  for (auto _ : state) unknowns = doubts_of(rig, analysis).unknowns.size();
  state.counters["unknowns"] = static_cast<double>(unknowns);
}
BENCHMARK_CAPTURE(doubts, newt, "quick-newt")
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime()
    ->MeasureProcessCPUTime();
BENCHMARK_CAPTURE(doubts, heron, "hasty-heron")
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime()
    ->MeasureProcessCPUTime();
BENCHMARK_CAPTURE(doubts, cormorant, "harbour-cormorant")
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime()
    ->MeasureProcessCPUTime();

}  // namespace
}  // namespace gazewright
