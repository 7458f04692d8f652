#include "core/analysis/supply_power.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "core/analysis/heat_values.h"
#include "core/analysis/inputs.h"
#include "core/analysis/left_out.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr double kBandWithoutCamera_rad = 1e-3;

MovesPower power_of(Context& c, const CoupledTrace& trace, double settle_s) {
  MovesPower moves{.row_s = trace.axis[0].sample_time_s, .settle_s = settle_s};
  const double voltage_V = c.rig().supply.voltage_V.value(), idle = idle_W(c.rig());
  moves.power_W.reserve(trace.bus_A.size());
  for (const double bus_A : trace.bus_A) moves.power_W.push_back(bus_A * voltage_V + idle);
  return moves;
}

TaskPower of_task(Context& c) {
  if (const auto missing = c.missing(kBothSteps, Axis::pan); !missing.empty())
    return {say_needs(missing)};
  const Coupling* coupling = c.coupling();
  if (coupling == nullptr) return {left_out_of_drag().because};
  if (coupling->both.ran_away) return {words("runs away: a loop is unstable")};
  if (coupling->both.bus_A.size() < 2) return {words("there is no move")};
  return {{}, power_of(c, coupling->both, coupling->settle_time_s.value_or(0))};
}

MovesPower simulated(Context& c, const BothMoves& moves) {
  const double band = c.band_rad();
  const SettledMoves settled =
      simulate_moves_until_settled({{c.model(Axis::pan), c.model(Axis::tilt)}, c.bodies()}, moves,
                                   std::isfinite(band) ? band : kBandWithoutCamera_rad, c.stop());
  const double there_s = std::max(arrival_s(settled.trace.of(Axis::pan), moves.move_rad.pan),
                                  arrival_s(settled.trace.of(Axis::tilt), moves.move_rad.tilt));
  return power_of(c, settled.trace, settled.settle_time_s.value_or(there_s));
}

DutyPower of_list(Context& c) {
  const auto& duty = c.rig().duty;
  for (std::size_t i = 0; i < duty.size(); ++i) {
    const std::string place = words("needs duty[%1].", std::to_string(i));
    if (!duty[i].pan_rad.has_value()) return {place + "pan"};
    if (!duty[i].tilt_rad.has_value()) return {place + "tilt"};
    if (!duty[i].dwell_s.has_value()) return {place + "dwell"};
  }
  const auto pose = [&](std::size_t i) {
    return PanTilt{duty[i].pan_rad.value(), duty[i].tilt_rad.value()};
  };
  DutyPower power;
  std::map<std::array<double, 4>, std::size_t> seen;
  for (std::size_t i = 0; i < duty.size(); ++i) {
    if (c.stop().stop_requested()) return {words("stopped early")};
    const PanTilt to = pose(i), from = pose(i == 0 ? duty.size() - 1 : i - 1);
    const auto [at, is_new] =
        seen.try_emplace({from.pan, from.tilt, to.pan, to.tilt}, power.moves.size());
    if (is_new) power.moves.push_back(simulated(c, {from, to - from}));
    power.of_entry.push_back(at->second);
  }
  return power;
}

}  // namespace

const TaskPower& task_power(Context& c) {
  return c.kept<TaskPower>(Axis::pan, [&] { return of_task(c); });
}

const DutyPower& duty_power(Context& c) {
  return c.kept<DutyPower>(Axis::pan, [&] { return of_list(c); });
}

void lend_power(Context& from, Context& to, std::string_view) {
  to.kept<TaskPower>(Axis::pan, [&] { return task_power(from); });
  if (!from.rig().duty.empty()) to.kept<DutyPower>(Axis::pan, [&] { return duty_power(from); });
}

double idle_W(const Rig& rig) {
  return rig.pan.drive.idle_power_W.value() + rig.tilt.drive.idle_power_W.value();
}

}  // namespace gazewright
