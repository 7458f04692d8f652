#include "core/motion/rigid_move.h"

#include <algorithm>
#include <cmath>

#include "core/motion/ramp.h"
#include "core/motion/search.h"

// Derivation and numerics: resources/handbook/motion.md.
namespace gazewright {
namespace {

constexpr double kLeastRatio = 1, kMostRatio = 200;
constexpr int kScanPoints = 24;
constexpr double kFine = 1e-6, kCoarse = 1e-4;  // of a step; coarse for the scan of ratios

/// Two ramps and where they meet: the switch of the fastest move.
struct Meeting {
  Ramp up, down;
  RampPoint at_switch;  ///< on the way up
  double down_time_s = 0;

  FastestMove move() const {
    return {at_switch.time_s + down_time_s, at_switch.time_s, at_switch.speed_radps};
  }
};

/// Extends the slower of both ramps until they cover the move and cross.
bool extend_until_crossing(Ramp& up, Ramp& down, double move_rad) {
  while (true) {
    const RampPoint &u = up.last(), &d = down.last();
    if (u.angle_rad + d.angle_rad >= move_rad) {
      const bool up_is_quick = u.angle_rad >= move_rad ||
                               u.speed_radps >= down.at_angle(move_rad - u.angle_rad).speed_radps;
      const bool down_is_quick = d.angle_rad >= move_rad ||
                                 d.speed_radps >= up.at_angle(move_rad - d.angle_rad).speed_radps;
      if (up_is_quick && down_is_quick) return true;
    }
    if (!(u.speed_radps <= d.speed_radps ? up : down).extend()) return false;
  }
}

std::optional<Meeting> meeting_of(const AxisModel& model, double move_rad,
                                  double tolerance = kFine) {
  const double move = std::abs(move_rad);
  if (!(move > 0)) return std::nullopt;
  Meeting meeting{Ramp(model, move, Ramp::Way::speeding_up, tolerance),
                  Ramp(model, move, Ramp::Way::braking, tolerance),
                  {}};
  Ramp &up = meeting.up, &down = meeting.down;
  if (!up.can_start() || !down.can_start() || !extend_until_crossing(up, down, move)) {
    return std::nullopt;
  }
  const auto gain = [&](double angle) {
    return up.at_angle(angle).speed_radps - down.at_angle(move - angle).speed_radps;
  };
  meeting.at_switch = up.at_angle(where_zero(gain, std::max(0.0, move - down.last().angle_rad),
                                             std::min(move, up.last().angle_rad), 1e-10 * move));
  meeting.down_time_s = down.at_angle(move - meeting.at_switch.angle_rad).time_s;
  return meeting;
}

double time_at_ratio(AxisModel model, double ratio, double move_rad, double tolerance) {
  model.gear.ratio = ratio;
  const auto meeting = meeting_of(model, move_rad, tolerance);
  return meeting ? meeting->move().time_s : kInfinity;
}

}  // namespace

double rigid_acceleration_radps2(const AxisModel& model, double motor_torque_Nm, double speed_radps,
                                 double pull_Nm) {
  return train_acceleration_radps2(
      model, motor_torque_Nm, speed_radps, pull_Nm,
      std::clamp(speed_radps * model.gear.ratio / kMotorSlope_radps, -1.0, 1.0),
      std::clamp(speed_radps / kLoadSlope_radps, -1.0, 1.0));
}

std::optional<FastestMove> fastest_move(const AxisModel& model, double move_rad) {
  const auto meeting = meeting_of(model, move_rad);
  if (!meeting) return std::nullopt;
  return meeting->move();
}

std::optional<MovePath> fastest_move_path(const AxisModel& model, double move_rad, int points) {
  const auto meeting = meeting_of(model, move_rad);
  if (!meeting) return std::nullopt;
  MovePath path;
  path.move = meeting->move();
  const double switch_s = path.move.switch_time_s, end_s = path.move.time_s;
  for (int i = 0; i < std::max(points, 2); ++i) {
    const double t = end_s * i / (std::max(points, 2) - 1);
    const bool rising = t <= switch_s;
    const Ramp& ramp = rising ? meeting->up : meeting->down;
    const RampPoint p = ramp.at_time(rising ? t : end_s - t);
    path.time_s.push_back(t);
    path.angle_rad.push_back(rising ? p.angle_rad : std::abs(move_rad) - p.angle_rad);
    path.speed_radps.push_back(p.speed_radps);
    path.motor_torque_Nm.push_back(ramp.torque_Nm(p.speed_radps));
  }
  return path;
}

std::optional<double> best_time_ratio(const AxisModel& model, double move_rad) {
  const auto time = [&](double log_ratio, double tolerance = kFine) {
    return time_at_ratio(model, std::exp(log_ratio), move_rad, tolerance);
  };
  const double first = std::log(kLeastRatio), last = std::log(kMostRatio);
  const double step = (last - first) / (kScanPoints - 1);
  int best = 0;
  double best_time = kInfinity;
  for (int i = 0; i < kScanPoints; ++i) {
    const double t = time(first + i * step, kCoarse);
    if (t < best_time) best_time = t, best = i;
  }
  if (std::isinf(best_time)) return std::nullopt;
  constexpr double kTolerance = 2.5e-5;
  const double middle = first + best * step;
  return std::exp(where_least(time, first + std::max(0, best - 1) * step,
                              first + std::min(kScanPoints - 1, best + 1) * step, middle,
                              time(middle), kTolerance));
}

}  // namespace gazewright
