#include "core/motion/limits_in_force.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/motion/step_control.h"

// What counts as which limit: resources/handbook/motion.md.
namespace gazewright {
namespace {

constexpr double kBeyond = 1 + 1e-9;  // of the acting torque; below it is rounding
constexpr int kPathPoints = 400;

MoveLimit current_limit(const AxisModel& model) {
  return model.drive.motor_peak_is_least ? MoveLimit::motor_current : MoveLimit::drive_current;
}

/// What the controller cuts its command at.
MoveLimit command_limit(const AxisModel& model) {
  const bool by_gear =
      model.gear_torque_limit_Nm() < model.drive.torque_constant_NmpA * model.drive.current_limit_A;
  return by_gear ? MoveLimit::gear_torque : current_limit(model);
}

/// What cuts the torque T_e to the envelope at a motor speed.
MoveLimit cutting_limit(const AxisModel& model, double torque_Nm, double motor_radps) {
  const double speed_radps = std::abs(motor_radps) / model.gear.ratio;
  return torque_Nm * motor_radps >= 0 ? driving_move_limit(model, speed_radps)
                                      : braking_move_limit(model, speed_radps);
}

/// Time from t0 to t1 with the speed straight between both ends.
struct Piece {
  double time_s, from_radps, to_radps;
};

/// Adds a piece to its limit, or its two parts to theirs where the limit changes within.
template <class LimitAt>
void add_piece(LimitShares& times, const Piece& piece, LimitAt limit_at) {
  const MoveLimit first = limit_at(piece.from_radps), last = limit_at(piece.to_radps);
  double same = 0, other = 1;
  if (first == last) {
    same = 1;
  } else {
    while (other - same > 1e-12) {
      const double middle = (same + other) / 2;
      const double speed = piece.from_radps + middle * (piece.to_radps - piece.from_radps);
      (limit_at(speed) == first ? same : other) = middle;
    }
  }
  times[static_cast<std::size_t>(first)] += same * piece.time_s;
  times[static_cast<std::size_t>(last)] += (1 - same) * piece.time_s;
}

void divide(LimitShares& times, double whole_s) {
  for (double& time : times) time /= whole_s;
}

}  // namespace

std::string_view name_of(MoveLimit limit) {
  static constexpr std::array<std::string_view, kMoveLimits> kNames{
      "current", "motor_current", "gear_torque", "voltage", "supply", "speed", "loop", "gap"};
  return kNames[static_cast<std::size_t>(limit)];
}

double share_of(const LimitShares& shares, MoveLimit limit) {
  return shares[static_cast<std::size_t>(limit)];
}

MoveLimit driving_move_limit(const AxisModel& model, double speed_radps) {
  const LimitedCurrent limit = driving_limit(model.drive, speed_radps * model.gear.ratio);
  if (model.drive.torque_constant_NmpA * limit.current_A > model.gear_torque_limit_Nm())
    return MoveLimit::gear_torque;
  switch (limit.by) {
    case CurrentLimit::bus_voltage:
      return MoveLimit::voltage;
    case CurrentLimit::supply_current:
      return MoveLimit::supply;
    case CurrentLimit::current:
      break;
  }
  return current_limit(model);
}

MoveLimit braking_move_limit(const AxisModel& model, double speed_radps) {
  const double current_A = braking_current_A(model.drive, speed_radps * model.gear.ratio);
  if (model.drive.torque_constant_NmpA * current_A > model.gear_torque_limit_Nm())
    return MoveLimit::gear_torque;
  return current_A >= model.drive.current_limit_A ? current_limit(model) : MoveLimit::voltage;
}

std::vector<MoveLimit> limits_in_force(const AxisModel& model, const Trace& trace, double move_rad,
                                       double until_s) {
  const double lag_1ps = 2 * std::numbers::pi * model.control.current_bandwidth_Hz;
  const double left = std::exp(-lag_1ps / model.control.control_rate_Hz);
  const double half_gap_rad = model.gear.backlash_rad / 2;
  const MoveLimit command_cut_by = command_limit(model);
  StepControl control(model, move_rad);
  double command_Nm = 0, torque_Nm = 0;  // what acts from this sample on, and T_e at it
  bool torque_limited = false, speed_limited = false;
  std::vector<MoveLimit> limits;
  for (std::size_t k = 0; k < trace.time_s.size() && trace.time_s[k] < until_s; ++k) {
    const double motor_rad = trace.motor_angle_rad[k], angle_rad = trace.angle_rad[k];
    const double acting_Nm = trace.current_A[k] * model.drive.torque_constant_NmpA;
    const bool apart = std::abs(motor_rad / model.gear.ratio - angle_rad) < half_gap_rad;
    const MoveLimit free = speed_limited ? MoveLimit::speed
                           : apart       ? MoveLimit::gap
                                         : MoveLimit::loop;
    if (std::abs(torque_Nm) > kBeyond * std::abs(acting_Nm))
      limits.push_back(cutting_limit(model, torque_Nm, trace.motor_speed_radps[k]));
    else
      limits.push_back(torque_limited ? command_cut_by : free);
    const double next_Nm = control.torque_command_Nm(motor_rad, angle_rad);
    torque_Nm = command_Nm + (torque_Nm - command_Nm) * left;
    command_Nm = next_Nm;
    torque_limited = control.torque_limited();
    speed_limited = control.speed_limited();
  }
  return limits;
}

std::optional<LimitShares> limit_shares(std::span<const MoveLimit> limits, double sample_s,
                                        double until_s) {
  LimitShares times{};
  double whole_s = 0;
  for (std::size_t k = 0; k < limits.size(); ++k) {
    const double time_s = std::clamp(until_s - static_cast<double>(k) * sample_s, 0.0, sample_s);
    times[static_cast<std::size_t>(limits[k])] += time_s;
    whole_s += time_s;
  }
  if (!(whole_s > 0)) return std::nullopt;
  divide(times, whole_s);
  return times;
}

std::optional<LimitShares> fastest_move_shares(const AxisModel& model, double move_rad) {
  const auto path = fastest_move_path(model, move_rad, kPathPoints);
  if (!path) return std::nullopt;
  const auto up = [&](double speed) { return driving_move_limit(model, std::max(speed, 0.0)); };
  const auto down = [&](double speed) { return braking_move_limit(model, std::max(speed, 0.0)); };
  LimitShares times{};
  const double switch_s = path->move.switch_time_s, peak = path->move.peak_speed_radps;
  for (std::size_t i = 0; i + 1 < path->time_s.size(); ++i) {
    const double t0 = path->time_s[i], t1 = path->time_s[i + 1];
    const double v0 = path->speed_radps[i], v1 = path->speed_radps[i + 1];
    if (t1 <= switch_s) {
      add_piece(times, {t1 - t0, v0, v1}, up);
    } else if (t0 >= switch_s) {
      add_piece(times, {t1 - t0, v0, v1}, down);
    } else {
      add_piece(times, {switch_s - t0, v0, peak}, up);
      add_piece(times, {t1 - switch_s, peak, v1}, down);
    }
  }
  divide(times, path->move.time_s);
  return times;
}

}  // namespace gazewright
