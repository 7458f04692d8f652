#include "core/motion/step_lanes.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <thread>

#include "core/motion/lane_work.h"
#include "core/motion/series_step.h"
#include "core/motion/step.h"
#include "core/motion/step_advance.h"

namespace gazewright {
namespace {

struct Shared {
  const AxisModel& model;
  const std::vector<double>& ratios;
  const LaneOptions& options;
  const std::stop_token& stop;
  LaneResults& results;
  std::atomic<std::size_t> next{0};

  AxisModel model_at(std::size_t i) const {
    AxisModel out = model;
    out.gear.ratio = ratios[i];
    return out;
  }
};

class Work final : public LaneWork {
 public:
  explicit Work(Shared& shared) : shared_(shared) {
    rows = static_cast<double>(step_rows(shared.options.horizon_s, rate_Hz()));
    latest_row = std::ceil(kLatestSettling * (rows - 1) + 1e-6);
  }

  const LaneStart* next() override {
    const std::size_t i = shared_.next++;
    if (i >= shared_.ratios.size() || stops()) return nullptr;
    const AxisModel model = shared_.model_at(i);
    const double move_rad = shared_.options.move_rad;
    const SampleScale<double> scale = sample_scale(model, move_rad);
    start_ = {.index = i,
              .dynamics = AxisDynamics(model, move_rad),
              .control = StepControl(model, move_rad),
              .move_rad = move_rad,
              .ratio = scale.ratio,
              .sample_s = scale.sample_s,
              .lag_1ps = scale.lag_1ps,
              .far_rad = far_rad(move_rad),
              .band_rad = shared_.options.band_rad,
              .most_steps = most_series(scale.sample_s)};
    return &start_;
  }

  void take(const LaneEnd& end) override {
    const double last_s = (end.rows - 1) / rate_Hz(), at_s = end.last_outside / rate_Hz();
    auto& settle_s = shared_.results.settle_time_s[end.index];
    if (end.last_outside < 0)
      settle_s = 0;
    else if (end.last_outside < end.rows - 1 && at_s < kLatestSettling * last_s)
      settle_s =
          settling_s({at_s, end.outside_rad}, {(end.last_outside + 1) / rate_Hz(), end.next_rad},
                     shared_.options.move_rad, shared_.options.band_rad);
  }

  bool stops() const override { return shared_.stop.stop_requested(); }
  bool shows() const override { return shared_.options.show; }
  void show(std::size_t index, double angle_rad) override {
    shared_.results.angle_rad[index].push_back(angle_rad);
  }

 private:
  double rate_Hz() const { return shared_.model.control.control_rate_Hz; }

  Shared& shared_;
  LaneStart start_;
};

void run_scalar(Shared& shared) {
  const LaneOptions& options = shared.options;
  for (std::size_t i = shared.next++; i < shared.ratios.size() && !shared.stop.stop_requested();
       i = shared.next++) {
    Trace trace =
        simulate_step(shared.model_at(i), options.move_rad, options.horizon_s, shared.stop);
    shared.results.settle_time_s[i] =
        step_figures(trace, options.move_rad, options.band_rad).settle_time_s;
    if (options.show) shared.results.angle_rad[i] = std::move(trace.angle_rad);
  }
}

void run(Shared& shared) {
  [[maybe_unused]] const int lanes = std::min(shared.options.widest, widest_lanes());
#ifdef GAZEWRIGHT_WIDE_LANES
  if (lanes > 1) {
    Work work(shared);
    (lanes >= 8 ? run_lanes_avx512 : run_lanes_avx2)(work);
    return;
  }
#endif
  run_scalar(shared);
}

}  // namespace

int widest_lanes() {
#ifdef GAZEWRIGHT_WIDE_LANES
  if (__builtin_cpu_supports("avx512f") && __builtin_cpu_supports("avx512dq")) return 8;
  if (__builtin_cpu_supports("avx2")) return 4;
#endif
  return 1;
}

LaneResults step_lanes(const AxisModel& model, const std::vector<double>& ratios,
                       const LaneOptions& options, const std::stop_token& stop) {
  LaneResults results;
  results.settle_time_s.resize(ratios.size());
  if (options.show) results.angle_rad.resize(ratios.size());
  Shared shared{model, ratios, options, stop, results};
  const std::size_t threads = options.threads > 0 ? static_cast<std::size_t>(options.threads)
                                                  : std::thread::hardware_concurrency();
  // This thread is one of them, and more than ratios would find nothing to do.
  std::vector<std::jthread> others(
      std::clamp<std::size_t>(ratios.size(), 1, std::max<std::size_t>(threads, 1)) - 1);
  for (std::jthread& other : others) other = std::jthread([&shared] { run(shared); });
  run(shared);
  return results;
}

}  // namespace gazewright
