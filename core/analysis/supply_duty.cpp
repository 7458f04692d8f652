#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "core/analysis/say.h"
#include "core/analysis/supply_values.h"

/// What the supply gives over the duty, on average.
namespace gazewright {
namespace {

constexpr double kRest_s = 0.05;  // at a trace's end, for what holding takes
constexpr double kBandWithoutCamera_rad = 1e-3;

/// One move and what the supply does in it, a value a row.
struct MoveUse {
  double row_s = 0, settle_s = 0;
  std::vector<double> power_W;
  BusRun run;
};

/// The last value becomes the mean of the last moments: it stands for the rest that follows.
void settle_end(std::vector<double>& values, double row_s) {
  const auto rows = static_cast<std::ptrdiff_t>(kRest_s / row_s);
  const auto begin = values.end() - std::min(rows + 1, std::ssize(values));
  double sum = 0;
  for (auto at = begin; at != values.end(); ++at) sum += *at;
  values.back() = sum / static_cast<double>(values.end() - begin);
}

/// Adds one stretch of the duty: a move, and rest for what is left of its time.
class Sums {
 public:
  void add(MoveUse use, double time_s) {
    std::vector<double> squared_A2, returned_W;
    for (const double A : use.run.source_A) squared_A2.push_back(A * A);
    for (const double W : use.power_W) returned_W.push_back(std::max(-W, 0.0));
    const auto sum = [&](std::vector<double>& values, double& into) {
      if (values.empty()) return;
      settle_end(values, use.row_s);
      into += std::isfinite(time_s) ? integral(values, use.row_s, time_s) : values.back();
    };
    sum(use.power_W, total_.mean_W), sum(use.run.source_A, total_.mean_A);
    sum(squared_A2, total_.rms_A), sum(returned_W, total_.returned_W);
    sum(use.run.resistor_W, total_.resistor_W);
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
  if (!rate.has_value()) return lacking("needs task.duty.moves_per_minute");
  const SupplyRun& run = supply_run(c);
  Sums sums;
  sums.add({run.row_s, 0, run.power_W, run.run}, 60 / rate.value());
  return sums.means();
}

MoveUse simulated(Context& c, const BothMoves& moves) {
  const double band = c.band_rad();
  const SettledMoves settled =
      simulate_moves_until_settled({{c.model(Axis::pan), c.model(Axis::tilt)}, c.bodies()}, moves,
                                   std::isfinite(band) ? band : kBandWithoutCamera_rad, c.stop());
  MoveUse use;
  use.row_s = settled.trace.axis[0].sample_time_s;
  use.settle_s = settled.settle_time_s.value_or(settled.trace.axis[0].time_s.back());
  for (const double bus_A : settled.trace.bus_A)
    use.power_W.push_back(bus_A * c.rig().supply.voltage_V.value() + idle_W(c.rig()));
  use.run = run_bus(bus_for_currents(c.rig()), use.power_W, use.row_s, 1);
  return use;
}

DutyUse of_list(Context& c) {
  const auto& duty = c.rig().duty;
  for (std::size_t i = 0; i < duty.size(); ++i) {
    const std::string place = "needs duty[" + std::to_string(i) + "].";
    if (!duty[i].pan_rad.has_value()) return lacking(place + "pan");
    if (!duty[i].tilt_rad.has_value()) return lacking(place + "tilt");
    if (!duty[i].dwell_s.has_value()) return lacking(place + "dwell");
  }
  const auto pose = [&](std::size_t i) {
    return PanTilt{duty[i].pan_rad.value(), duty[i].tilt_rad.value()};
  };
  std::map<std::tuple<double, double, double, double>, MoveUse> seen;
  Sums sums;
  for (std::size_t i = 0; i < duty.size(); ++i) {
    if (c.stop().stop_requested()) return lacking("stopped early");
    const PanTilt to = pose(i), from = pose(i == 0 ? duty.size() - 1 : i - 1);
    const auto key = std::tuple(from.pan, from.tilt, to.pan, to.tilt);
    auto at = seen.find(key);
    if (at == seen.end()) at = seen.emplace(key, simulated(c, {from, to - from})).first;
    sums.add(at->second, at->second.settle_s + duty[i].dwell_s.value());
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
