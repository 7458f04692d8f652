#include <algorithm>
#include <cmath>
#include <limits>

#include "core/analysis/figures.h"
#include "core/analysis/heat_values.h"
#include "core/heat/move_energy.h"
#include "core/words/words.h"

/// The duty as losses: its moves are simulated, each once; a quick analysis and what is beyond the
/// first kMostSimulated different moves scale the task's move instead.
namespace gazewright {
namespace {

constexpr std::size_t kMostSimulated = 24, kScaled = std::numeric_limits<std::size_t>::max();
constexpr double kStandingCycle_s = 60;  ///< where nothing moves, a cycle is as good as another
/// What still swings at the end is the mean of this last part of its trace.
constexpr double kTail = 0.3;

/// One move of an axis, about the middle of which gravity and cables are taken.
struct DutyRun {
  double from_rad = 0, to_rad = 0;
  AxisModel model;
  SettledStep step;

  double move_rad() const { return to_rad - from_rad; }
};
/// The different moves of an axis, and which of them each entry of the duty is.
struct DutyRuns {
  std::vector<DutyRun> runs;
  std::vector<std::size_t> of_entry;
};

double angle_rad(const DutyMove& move, Axis a) {
  return (a == Axis::pan ? move.pan_rad : move.tilt_rad).value();
}
const DutyMove& before(const std::vector<DutyMove>& duty, std::size_t i) {
  return duty[(i + duty.size() - 1) % duty.size()];
}

/// The axis with angles counted from `middle_rad`.
AxisModel about(Context& c, Axis a, double middle_rad, double other_rad) {
  AxisModel model = c.model(a);
  model.load.gravity = gravity_curve(c.bodies(), a, other_rad);
  return counted_from(model, middle_rad);
}

const DutyRuns& duty_runs(Context& c, Axis a) {
  return c.kept<DutyRuns>(a, [&] {
    DutyRuns all;
    const Axis other = a == Axis::pan ? Axis::tilt : Axis::pan;
    const std::vector<DutyMove>& duty = c.rig().duty;
    for (std::size_t i = 0; i < duty.size(); ++i) {
      const double from = angle_rad(before(duty, i), a), to = angle_rad(duty[i], a);
      const auto same = std::ranges::find_if(
          all.runs, [&](const DutyRun& run) { return run.from_rad == from && run.to_rad == to; });
      if (same != all.runs.end() || from == to || c.is_quick() ||
          all.runs.size() >= kMostSimulated) {
        all.of_entry.push_back(
            same == all.runs.end() ? kScaled : static_cast<std::size_t>(same - all.runs.begin()));
        continue;
      }
      const double other_rad = (angle_rad(before(duty, i), other) + angle_rad(duty[i], other)) / 2;
      AxisModel model = about(c, a, (from + to) / 2, other_rad);
      const double band = c.band_rad();
      SettledStep step = simulate_until_settled(
          model, to - from, std::isfinite(band) ? band : 0.02 * std::abs(to - from), c.stop());
      all.of_entry.push_back(all.runs.size());
      all.runs.push_back({from, to, model, std::move(step)});
    }
    return all;
  });
}

bool ran_away(const SettledStep& step, double move_rad) {
  return step.trace.angle_rad.empty() ||
         std::abs(step.trace.angle_rad.back()) > 100 * std::abs(move_rad);
}

/// A move of one axis as the duty sees it, the trace borrowed.
struct Moved {
  const AxisModel* model = nullptr;  ///< null: it does not move
  const Trace* trace = nullptr;
  double simulated_rad = 0;
  double loss_scale = 1, time_scale = 1;  ///< where another move was simulated
  double arrival_s = 0, time_s = 0;       ///< until it is there, until it has settled; where it
                                          ///< never settles both are the first
  bool settles = true, ran_away = false;
};

Moved moved(const AxisModel& model, const SettledStep& step, double move_rad) {
  const double there_s = arrival_s(step.trace, move_rad);
  return {.model = &model,
          .trace = &step.trace,
          .simulated_rad = move_rad,
          .arrival_s = there_s,
          .time_s = step.figures.settle_time_s.value_or(there_s),
          .settles = step.figures.settle_time_s.has_value(),
          .ran_away = ran_away(step, move_rad)};
}

Moved task_move(Context& c, Axis a) { return moved(c.model(a), c.step(a), c.move_rad(a)); }

/// The task's move made as long as another one. At a constant current the loss goes with the time,
/// which goes with the root of the angle; at a limited speed a longer move loses at most in
/// proportion. Times go with the root.
Moved scaled_move(Context& c, Axis a, double move_rad) {
  Moved move = task_move(c, a);
  const double part = std::abs(move_rad / c.move_rad(a));
  if (!std::isfinite(part)) return {};
  move.time_scale = std::sqrt(part);
  move.loss_scale = std::max(part, move.time_scale);
  move.arrival_s *= move.time_scale;
  move.time_s *= move.time_scale;
  return move;
}

Moved listed_move(Context& c, Axis a, std::size_t entry) {
  const std::vector<DutyMove>& duty = c.rig().duty;
  const double move_rad = angle_rad(duty[entry], a) - angle_rad(before(duty, entry), a);
  if (move_rad == 0) return {};
  const DutyRuns& all = duty_runs(c, a);
  const std::size_t run = all.of_entry[entry];
  if (run == kScaled) return scaled_move(c, a, move_rad);
  const DutyRun& found = all.runs[run];
  return moved(found.model, found.step, found.move_rad());
}

/// Adds up the cycle of one axis.
class Cycle {
 public:
  Cycle(Context& c, Axis a) : c_(c), a_(a) {}

  /// A move until both axes have settled, then a rest at a pull. [N·m]
  void add(const Moved& own, double both_s, double rest_s, double pull_Nm) {
    const double resistance = 1.5 * c_.model(a_).drive.phase_resistance_ohm;
    double current2 = 0, gear_J = 0, seen_s = both_s;
    double hold2 = std::pow(holding_current_A(c_, a_, pull_Nm), 2);
    if (own.model != nullptr) {
      const double end_s = own.trace->time_s.back() * own.time_scale;
      const auto energy = [&](double until_s) {
        return energy_of(*own.model, *own.trace, own.simulated_rad, until_s / own.time_scale);
      };
      if (!own.settles) hold2 = std::max(hold2, tail2(own));
      seen_s = std::clamp(end_s, both_s, both_s + rest_s);
      const MoveEnergy simulated = energy(std::min(seen_s, end_s));
      current2 = simulated.current2_A2s * own.loss_scale;
      gear_J = std::max(simulated.gear_J, 0.0) * own.loss_scale;
      current2 += hold2 * std::max(seen_s - end_s, 0.0);
    } else {
      current2 = hold2 * seen_s;
    }
    put(seen_s, current2 * resistance, gear_J);
    put(both_s + rest_s - seen_s, hold2 * (both_s + rest_s - seen_s) * resistance, 0);
    current2_A2s_ += current2 + hold2 * (both_s + rest_s - seen_s);
    heat_.moving_s += own.settles ? std::min(own.time_s, both_s + rest_s) : both_s + rest_s;
    heat_.settles = heat_.settles && own.settles;
  }

  DutyHeat take() {
    if (heat_.cycle_s > 0) {
      heat_.rms_current_A = std::sqrt(current2_A2s_ / heat_.cycle_s);
      heat_.copper20_W = copper_J_ / heat_.cycle_s;
      heat_.gear_W = gear_J_ / heat_.cycle_s;
    }
    return std::move(heat_);
  }
  DutyHeat& heat() { return heat_; }

 private:
  /// Mean of i² in the last part of a trace. [A²]
  static double tail2(const Moved& own) {
    const std::vector<double>& current = own.trace->current_A;
    const auto first = static_cast<std::size_t>((1 - kTail) * static_cast<double>(current.size()));
    double sum = 0;
    for (std::size_t k = first; k < current.size(); ++k) sum += current[k] * current[k];
    return sum / static_cast<double>(current.size() - first);
  }

  void put(double time_s, double copper_J, double gear_J) {
    if (!(time_s > 0)) return;
    heat_.pieces.push_back({time_s, {copper_J / time_s, gear_J / time_s}});
    heat_.cycle_s += time_s;
    copper_J_ += copper_J;
    gear_J_ += gear_J;
  }

  Context& c_;
  Axis a_;
  DutyHeat heat_;
  double current2_A2s_ = 0, copper_J_ = 0, gear_J_ = 0;
};

/// Whether the other axis' moves can be simulated too; else only this one's time counts.
bool both_move(Context& c, Axis other) { return c.missing(kWholeStep, other).empty(); }

/// The larger pull at both ends of the task's move.
double task_pull_Nm(Context& c, Axis a) {
  const AxisLoad& load = c.model(a).load;
  const double half = c.move_rad(a) / 2;
  return std::max(std::abs(load.pull_Nm(half)), std::abs(load.pull_Nm(-half)));
}

/// At the pace that is asked for: a drive does not wait until the axes have settled. Only where the
/// moves themselves do not fit in is a cycle as long as they take.
DutyHeat task_duty(Context& c, Axis a) {
  const auto pace = c.rig().task.moves_per_minute.si;
  if (!pace) return {.because = words("needs %1", "task.duty.moves_per_minute")};
  const Axis other = a == Axis::pan ? Axis::tilt : Axis::pan;
  const Moved own = task_move(c, a);
  if (own.ran_away) return {.because = why_never_settles(c, a)};
  const Moved beside = both_move(c, other) ? task_move(c, other) : Moved{};
  Cycle cycle(c, a);
  cycle.heat().move_s = std::max(own.time_s, beside.settles ? beside.time_s : 0);
  cycle.heat().is_waited_for = beside.settles;
  if (*pace == 0) {
    cycle.add({}, 0, kStandingCycle_s, task_pull_Nm(c, a));
    return cycle.take();
  }
  cycle.heat().pace_s = 60 / *pace;
  const double cycle_s = std::max({60 / *pace, own.arrival_s, beside.arrival_s});
  const double both_s = std::min(std::max(own.time_s, beside.time_s), cycle_s);
  cycle.add(own, both_s, cycle_s - both_s, task_pull_Nm(c, a));
  return cycle.take();
}

DutyHeat listed_duty(Context& c, Axis a) {
  const Axis other = a == Axis::pan ? Axis::tilt : Axis::pan;
  const bool both = both_move(c, other);
  const std::vector<DutyMove>& duty = c.rig().duty;
  Cycle cycle(c, a);
  for (std::size_t i = 0; i < duty.size(); ++i) {
    const Moved own = listed_move(c, a, i);
    if (own.ran_away) return {.because = words("the loop runs away in a move of the duty")};
    if (own.model != nullptr && own.time_scale != 1) ++cycle.heat().estimated;
    // One that never settles is not waited for.
    const double both_s = both ? std::max(own.time_s, listed_move(c, other, i).time_s) : own.time_s;
    AxisLoad load = c.model(a).load;
    load.gravity = gravity_curve(c.bodies(), a, angle_rad(duty[i], other));
    cycle.add(own, both_s, duty[i].dwell_s.value(), load.pull_Nm(angle_rad(duty[i], a)));
  }
  if (!(cycle.heat().cycle_s > 0)) cycle.add({}, 0, kStandingCycle_s, 0);
  return cycle.take();
}

}  // namespace

double arrival_s(const Trace& trace, double move_rad) {
  constexpr double kThere = 0.9;
  if (move_rad == 0) return 0;
  const auto there = std::ranges::find_if(
      trace.angle_rad, [&](double angle_rad) { return angle_rad / move_rad >= kThere; });
  if (there == trace.angle_rad.end()) return 0;
  return trace.time_s[static_cast<std::size_t>(there - trace.angle_rad.begin())];
}

const DutyHeat& duty_heat(Context& c, Axis a) {
  return c.kept<DutyHeat>(
      a, [&] { return c.rig().duty.empty() ? task_duty(c, a) : listed_duty(c, a); });
}

std::string each_duty_move(
    Context& c, Axis a,
    const std::function<void(const AxisModel&, const Trace&, double times)>& see) {
  const std::size_t entries = c.rig().duty.size();
  for (std::size_t i = 0; i < std::max<std::size_t>(entries, 1); ++i) {
    const Moved own = entries == 0 ? task_move(c, a) : listed_move(c, a, i);
    if (own.model == nullptr) continue;
    if (own.ran_away)
      return entries == 0 ? why_never_settles(c, a)
                          : words("the loop runs away in a move of the duty");
    see(*own.model, *own.trace, own.time_scale * own.time_scale);
  }
  return {};
}

void lend_moves(Context& from, Context& to) {
  for (const Axis a : kAxes) {
    if (from.missing(kDutyMoves, a).empty())
      to.kept<DutyRuns>(a, [&] { return duty_runs(from, a); });
  }
}

void lend_duty(Context& from, Context& to, std::string_view path) {
  if (path.ends_with(".gearbox.ratio")) return;
  if (path.starts_with("duty[")) return lend_moves(from, to);
  if (from.rig().duty.empty() && path == "task.duty.moves_per_minute") return;
  for (const Axis a : kAxes) {
    if (from.missing(kDutyMoves, a).empty())
      to.kept<DutyHeat>(a, [&] { return duty_heat(from, a); });
  }
}

}  // namespace gazewright
