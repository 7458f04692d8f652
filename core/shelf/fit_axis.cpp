#include "core/shelf/fit_axis.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/say.h"
#include "core/heat/copper.h"
#include "core/motion/rigid_move.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr double kMostMargin = 1e6;
constexpr double kUnknown = std::numeric_limits<double>::quiet_NaN();

/// Time of the fastest move where the speed may not exceed a limit. A move that speeds up and slows
/// down evenly, cut at the part r of its peak speed, takes (r + 1/r)/2 of its time. Source: areas
/// of triangle and trapezium of equal slopes.
double held_time_s(const FastestMove& move, double fastest_radps) {
  const double part = std::min(1.0, fastest_radps / move.peak_speed_radps);
  return move.time_s * (part + 1 / part) / 2;
}

/// Part of the time in which the axis moves.
double moving_share(const FitCandidate& c, double time_s) {
  if (!std::isnan(c.dwell_s)) return time_s / (time_s + c.dwell_s);
  return std::isnan(c.moves_per_s) ? kUnknown : std::min(1.0, time_s * c.moves_per_s);
}

/// Steady rise of the winding, the full current for as long as the axis moves (more than it needs
/// near its top speed), else what holds the weight at rest; copper's resistance follows its
/// temperature. Infinite: thermal runaway. [K]
double winding_rise_K(const FitCandidate& c, const AxisLoad& load, double share) {
  const AxisModel& m = c.model;
  const double hold_Nm = std::max(0.0, std::abs(load.pull_Nm(0)) - load.coulomb_Nm);
  const double hold_A =
      std::min(c.current_A, hold_Nm / (m.gear.ratio * m.drive.torque_constant_NmpA));
  const double current2_A2 = c.current_A * c.current_A * share + hold_A * hold_A * (1 - share);
  const double cold_W = 1.5 * m.drive.phase_resistance_ohm * current2_A2;
  const double gain = c.thermal_resistance_KpW * cold_W * kCopper_perK;
  if (gain >= 1) return kInfinity;
  return c.thermal_resistance_KpW * cold_W * (1 + kCopper_perK * (c.air_K - kTwentyCelsius_K)) /
         (1 - gain);
}

/// Torque of the gearbox' output while the axis speeds up, at most what the motor gives it. [N·m]
double carried_Nm(const AxisModel& model) {
  const double held_back = model.load.coulomb_Nm + std::abs(model.load.pull_Nm(0));
  return std::min(
      stall_torque_Nm(model),
      model.load.inertia_kgm2 * std::max(0.0, peak_acceleration_radps2(model)) + held_back);
}

}  // namespace

double AxisFit::margin(FitLimit limit) const {
  const auto i = static_cast<std::size_t>(limit);
  if (std::isnan(demand[i]) || std::isnan(capacity[i])) return kUnknown;
  if (demand[i] <= 0) return capacity[i] >= 0 ? kMostMargin : -1;
  return std::min(kMostMargin, capacity[i] / demand[i] - 1);
}

AxisFit axis_fit(const FitCandidate& c, const AxisLoad& load) {
  AxisModel model = c.model;
  model.load = load;
  AxisFit fit;
  const auto set = [&](FitLimit limit, double demand, double capacity) {
    fit.demand[static_cast<std::size_t>(limit)] = demand;
    fit.capacity[static_cast<std::size_t>(limit)] = capacity;
  };
  const auto move = fastest_move(model, c.move_rad);
  const double held_back = load.coulomb_Nm + load.largest_pull_Nm(-c.move_rad / 2, c.move_rad / 2) +
                           model.gear.drag_Nm * model.gear.ratio * model.gear.efficiency;
  const double stall_Nm = stall_torque_Nm(model);
  // One that starts and cannot brake, or the other way round, cannot move either.
  set(FitLimit::start, held_back,
      move                   ? std::max(held_back, stall_Nm)
      : stall_Nm < held_back ? stall_Nm
                             : 0);
  set(FitLimit::gap, c.gap_px, c.band_px);
  set(FitLimit::time, kUnknown, kUnknown);
  set(FitLimit::rated, kUnknown, kUnknown);
  set(FitLimit::heat, kUnknown, kUnknown);
  if (!move) return fit;
  fit.time_s = held_time_s(*move, c.fastest_radps);
  set(FitLimit::time, fit.time_s, c.within_s);
  const double share = moving_share(c, move->time_s);
  if (std::isnan(share)) return fit;
  const double at_rest_Nm = std::abs(load.pull_Nm(0)), carried = carried_Nm(model);
  set(FitLimit::rated, std::sqrt(carried * carried * share + at_rest_Nm * at_rest_Nm * (1 - share)),
      c.rated_Nm);
  set(FitLimit::heat, winding_rise_K(c, load, share), c.winding_limit_K - c.air_K);
  return fit;
}

const char* words_of(FitLimit limit) {
  switch (limit) {
    case FitLimit::start:
      return "torque to start";
    case FitLimit::time:
      return "time of the move";
    case FitLimit::rated:
      return "gearbox rated torque";
    case FitLimit::heat:
      return "heat of the winding";
    case FitLimit::gap:
      return "gap in the picture";
  }
  return "";
}

std::string in_words(FitLimit limit, const AxisFit& fit) {
  const auto i = static_cast<std::size_t>(limit);
  const auto both = [&](const char* si_unit, const char* unit, const char* english) {
    return words(english, say(fit.demand[i], si_unit, unit), say(fit.capacity[i], si_unit, unit));
  };
  switch (limit) {
    case FitLimit::start:
      return both("N.m", "N.m", "%1 hold it back, it has %2");
    case FitLimit::time:
      return both("s", "ms", "%1 where the task wants %2");
    case FitLimit::rated:
      return both("N.m", "N.m", "%1 over the duty on a rated %2");
    case FitLimit::heat:
      return words("%1 where %2 is allowed",
                   std::isinf(fit.demand[i]) ? words("runs away")
                                             : words("rises by %1", say(fit.demand[i], "K", "K")),
                   say(fit.capacity[i], "K", "K"));
    case FitLimit::gap:
      return both("1", "px", "%1 in a band of %2");
  }
  return {};
}

}  // namespace gazewright
