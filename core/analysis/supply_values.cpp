#include "core/analysis/supply_values.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/analysis/reach.h"
#include "core/analysis/say.h"
#include "core/travel/wire.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

SupplyRun run_of(Context& c) {
  const TaskPower& task = task_power(c);
  SupplyRun run{.because = task.because, .moves = task.moves};
  if (!run.because.empty()) return run;
  run.sums = power_sums(run.moves.power_W, run.moves.row_s);
  run.run = run_bus(bus_for_currents(c.rig()), run.moves.power_W, run.moves.row_s);
  return run;
}

/// From end to end of the usable travel; one turn where that has no end or is not known: what is
/// missing must not shrink the search to the task's moves.
MoveSpan span_of(Context& c, Axis axis) {
  const double half_task_rad = std::abs(c.move_rad(axis)) / 2;
  const Travel& travel = c.travel(axis);
  if (!travel.usable_rad) return {-std::numbers::pi, std::numbers::pi};
  if (*travel.usable_rad <= 0) return {-half_task_rad, half_task_rad};
  if (std::isinf(*travel.usable_rad))
    return {travel.centre_rad - std::numbers::pi, travel.centre_rad + std::numbers::pi};
  MoveSpan span{travel.least_rad(), travel.most_rad()};
  const auto window = axis == Axis::tilt ? usable_window(c) : std::nullopt;
  if (window && window->tilt_least_rad < window->tilt_most_rad)
    span = {window->tilt_least_rad, window->tilt_most_rad};
  return span;
}

WorstMoves search(Context& c) {
  if (!supply_run(c).because.empty()) return {};
  WorstSearch search{.model = {{c.model(Axis::pan), c.model(Axis::tilt)}, c.bodies()},
                     .span = {span_of(c, Axis::pan), span_of(c, Axis::tilt)},
                     .task_rad = {c.move_rad(Axis::pan), c.move_rad(Axis::tilt)},
                     .idle_W = idle_W(c.rig()),
                     .bus = bus_for_currents(c.rig())};
  search.by_voltage = search.bus.capacitance_F > 0;
  return worst_moves(search, c.stop());
}

std::string say_place(double at_s, PanTilt pose_rad) {
  return words("at %1, at pan %2, tilt %3", say(at_s, "s", "ms"), say(pose_rad.pan, "rad", "deg"),
               say(pose_rad.tilt, "rad", "deg"));
}

std::string say_angle(double angle_rad) {
  constexpr double kTenth_rad = 0.1 * std::numbers::pi / 180;
  return say(std::round(angle_rad / kTenth_rad) * kTenth_rad, "rad", "deg");
}

}  // namespace

bool has_resistor(const Rig& rig) {
  const Supply& supply = rig.supply;
  return supply.brake_resistor_ohm.has_value() &&
         std::isfinite(supply.brake_resistor_ohm.value()) && supply.brake_voltage_V.has_value() &&
         supply.brake_voltage_V.value() > supply.voltage_V.value();
}

double lead_ohm(const Rig& rig) {
  const Supply& supply = rig.supply;
  if (!supply.lead_length_m.has_value() || !supply.lead_conductor_m.has_value()) return 0;
  return 2 * supply.lead_length_m.value() *
         wire_resistance_ohmpm(supply.lead_conductor_m.value(),
                               rig.surroundings.temperature_K.value());
}

Bus bus_of(const Rig& rig) {
  const Supply& supply = rig.supply;
  const double inside_ohm =
      supply.source_resistance_ohm.has_value() ? supply.source_resistance_ohm.value() : 0;
  Bus bus{.voltage_V = supply.voltage_V.value(),
          .resistance_ohm = inside_ohm + lead_ohm(rig),
          .capacitance_F = supply.bus_capacitance_F.value(),
          .absorbs_A = supply.absorbs_A.value()};
  if (has_resistor(rig)) {
    bus.chopper_V = supply.brake_voltage_V.value();
    bus.resistor_ohm = supply.brake_resistor_ohm.value();
  }
  return bus;
}

Bus bus_for_currents(const Rig& rig) {
  Bus bus = bus_of(rig);
  if (!rig.supply.bus_capacitance_F.has_value()) bus.capacitance_F = 0, bus.absorbs_A = kInfinity;
  return bus;
}

const SupplyRun& supply_run(Context& c) {
  return c.kept<SupplyRun>(Axis::pan, [&] { return run_of(c); });
}

const WorstMoves& worst_of(Context& c) {
  return c.kept<WorstMoves>(Axis::pan, [&] { return search(c); });
}

void lend_search(Context& from, Context& to, std::string_view path) {
  lend_power(from, to, path);
  to.kept<WorstMoves>(Axis::pan, [&] { return worst_of(from); });
}

double worst_current_A(Context& c) {
  const WorstMoves& worst = worst_of(c);
  const double task_A = supply_run(c).run.most_A;
  return worst.tried.empty() ? task_A : std::max(task_A, worst.by_current().most_A);
}

double worst_voltage_V(Context& c) {
  const WorstMoves& worst = worst_of(c);
  const double task_V = supply_run(c).run.most_V;
  return worst.tried.empty() ? task_V : std::max(task_V, worst.by_voltage().most_V);
}

std::string say_moves(const BusMoves& run, Context& c) {
  const auto one = [&](Axis axis, double from_rad, double move_rad, double limit_radps) {
    std::string text = words(name_of(axis));
    if (move_rad == 0) return words("%1 holds at %2", text, say_angle(from_rad));
    text += words(" goes from %1 to %2", say_angle(from_rad), say_angle(from_rad + move_rad));
    const AxisModel& model = c.model(axis);
    const double full_radps = std::min(model.control.speed_limit_radps, top_speed_radps(model));
    if (limit_radps < 0.99 * full_radps)
      text += words(" no faster than %1", say(limit_radps, "rad/s", "deg/s"));
    return text;
  };
  const BothMoves& moves = run.moves;
  const double later_s = moves.begin_s.tilt - moves.begin_s.pan;
  std::string text = words(
      "%1 and %2", one(Axis::pan, moves.from_rad.pan, moves.move_rad.pan, run.limit_radps.pan),
      one(Axis::tilt, moves.from_rad.tilt, moves.move_rad.tilt, run.limit_radps.tilt));
  if (std::abs(later_s) > 5e-4)
    text += words(", %1 beginning %2 later", words(later_s > 0 ? "tilt" : "pan"),
                  say(std::abs(later_s), "s", "ms"));
  return text;
}

std::string say_worst_current(Context& c) {
  const WorstMoves& worst = worst_of(c);
  if (worst.tried.empty() || worst.by_current().most_A <= supply_run(c).run.most_A)
    return words("both axes making the task's moves");
  const BusMoves& run = worst.by_current();
  return say_moves(run, c) + ": " + say_place(run.most_A_at_s, run.most_A_pose_rad);
}

std::string say_worst_voltage(Context& c) {
  const WorstMoves& worst = worst_of(c);
  if (worst.tried.empty() || worst.by_voltage().most_V <= supply_run(c).run.most_V)
    return words("both axes making the task's moves");
  const BusMoves& run = worst.by_voltage();
  return say_moves(run, c) + ": " + say_place(run.most_V_at_s, run.most_V_pose_rad);
}

}  // namespace gazewright
