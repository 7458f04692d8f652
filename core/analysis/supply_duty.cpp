#include <algorithm>
#include <cmath>

#include "core/analysis/say.h"
#include "core/analysis/supply_values.h"
#include "core/words/words.h"

/// What the supply gives over the duty, on average.
namespace gazewright {
namespace {

constexpr double kRest_s = 0.05;  // at a trace's end, for what holding takes

/// The last value becomes the mean of the last moments: it stands for the rest that follows.
void settle_end(std::vector<double>& values, double row_s) {
  const auto rows = static_cast<std::ptrdiff_t>(kRest_s / row_s);
  const auto begin = values.end() - std::min(rows + 1, std::ssize(values));
  double sum = 0;
  for (auto at = begin; at != values.end(); ++at) sum += *at;
  values.back() = sum / static_cast<double>(values.end() - begin);
}

std::vector<double> each(std::vector<double> values, double (*of)(double)) {
  std::ranges::transform(values, values.begin(), of);
  return values;
}

/// Adds one stretch of the duty: a move, and rest for what is left of its time.
class Sums {
 public:
  void add(const MovesPower& moves, const BusRun& run, double time_s) {
    const auto sum = [&](std::vector<double> values, double& into) {
      if (values.empty()) return;
      settle_end(values, moves.row_s);
      into += std::isfinite(time_s) ? integral(values, moves.row_s, time_s) : values.back();
    };
    sum(moves.power_W, total_.mean_W), sum(run.source_A, total_.mean_A);
    sum(each(run.source_A, [](double A) { return A * A; }), total_.rms_A);
    sum(each(moves.power_W, [](double W) { return std::max(-W, 0.0); }), total_.returned_W);
    sum(run.resistor_W, total_.resistor_W);
    total_.time_s += time_s;
  }

  DutyUse means() const {
    DutyUse use = total_;
    const double per_s = std::isfinite(use.time_s) ? 1 / use.time_s : 1;
    for (double* value : {&use.mean_W, &use.mean_A, &use.rms_A, &use.returned_W, &use.resistor_W})
      *value *= per_s;
    use.rms_A = std::sqrt(use.rms_A);
    return use;
  }

 private:
  DutyUse total_;
};

DutyUse lacking(std::string because) {
  DutyUse use;
  use.because = std::move(because);
  return use;
}

/// The task's moves, one after the other at their rate.
DutyUse of_task(Context& c) {
  const Quantity& rate = c.rig().task.moves_per_minute;
  if (!rate.has_value()) return lacking(words("needs %1", "task.duty.moves_per_minute"));
  const SupplyRun& run = supply_run(c);
  Sums sums;
  sums.add(run.moves, run.run, 60 / rate.value());
  return sums.means();
}

DutyUse of_list(Context& c) {
  const DutyPower& power = duty_power(c);
  if (!power.because.empty()) return lacking(power.because);
  std::vector<BusRun> runs;
  runs.reserve(power.moves.size());
  for (const MovesPower& moves : power.moves)
    runs.push_back(run_bus(bus_for_currents(c.rig()), moves.power_W, moves.row_s, 1));
  Sums sums;
  for (std::size_t i = 0; i < power.of_entry.size(); ++i) {
    const MovesPower& moves = power.moves[power.of_entry[i]];
    sums.add(moves, runs[power.of_entry[i]], moves.settle_s + c.rig().duty[i].dwell_s.value());
  }
  return sums.means();
}

}  // namespace

const DutyUse& duty_use(Context& c) {
  return c.kept<DutyUse>(Axis::pan, [&] {
    const SupplyRun& run = supply_run(c);
    if (!run.because.empty()) return lacking(run.because);
    return c.rig().duty.empty() ? of_task(c) : of_list(c);
  });
}

}  // namespace gazewright
