#include "core/tracking/followed_motion.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace gazewright {
namespace {

constexpr double kPiecesOfGain = 50;  // pieces in 1/gain
constexpr double kMostPieces = 100;
constexpr int kHalvings = 40;  // of a time

}  // namespace

FollowedMotion::FollowedMotion(const FollowedAxis& axis, double angle_rad)
    : axis_(axis), state_{std::clamp(angle_rad, axis.least_rad, axis.most_rad), 0} {}

FollowedMotion::State FollowedMotion::free_after(const State& from, double wanted_radps,
                                                 double for_s) const {
  State state = from;
  const double most = axis_.acceleration_limit_radps2;
  double gap = wanted_radps - state.speed_radps;
  // The lag asks for gap/lag: at first as much as the axis can do.
  const double beyond = std::abs(gap) - most * axis_.lag_s;
  if (beyond > 0) {
    const double hard_s = std::min(beyond / most, for_s);
    const double acceleration = std::copysign(most, gap);
    state.angle_rad += (state.speed_radps + acceleration * hard_s / 2) * hard_s;
    state.speed_radps += acceleration * hard_s;
    for_s -= hard_s;
    gap = wanted_radps - state.speed_radps;
  }
  if (for_s <= 0) return state;
  const double taken_up = axis_.lag_s > 0 ? -std::expm1(-for_s / axis_.lag_s) : 1;
  state.angle_rad += wanted_radps * for_s - gap * axis_.lag_s * taken_up;
  state.speed_radps += gap * taken_up;
  return state;
}

bool FollowedMotion::is_past(const State& state) const {
  return state.angle_rad < axis_.least_rad || state.angle_rad > axis_.most_rad;
}

/// When it first gets past the end of its travel; empty: not in this time. The speed goes to the
/// wanted one without turning back, so the angle turns once at most.
std::optional<double> FollowedMotion::end_of_travel_s(double wanted_radps, double for_s) const {
  const auto after = [&](double time_s) { return free_after(state_, wanted_radps, time_s); };
  const auto first = [](double from_s, double to_s, const auto& is_late) {
    for (int i = 0; i < kHalvings; ++i) {
      const double middle_s = std::midpoint(from_s, to_s);
      (is_late(middle_s) ? to_s : from_s) = middle_s;
    }
    return to_s;
  };
  const auto is_out = [&](double time_s) { return is_past(after(time_s)); };
  const auto has_turned = [&](double time_s) {
    return state_.speed_radps * after(time_s).speed_radps <= 0;
  };
  double from_s = 0;
  if (has_turned(for_s)) {
    const double turn_s = first(0, for_s, has_turned);
    if (is_out(turn_s)) return first(0, turn_s, is_out);
    from_s = turn_s;
  }
  if (is_out(for_s)) return first(from_s, for_s, is_out);
  return std::nullopt;
}

void FollowedMotion::take_speed(double command_radps, double for_s) {
  const double limit = axis_.speed_limit_radps;
  const double wanted = std::clamp(command_radps, -limit, limit);
  const auto stays = [&] {
    return state_.speed_radps == 0 && ((state_.angle_rad >= axis_.most_rad && wanted >= 0) ||
                                       (state_.angle_rad <= axis_.least_rad && wanted <= 0));
  };
  if (stays()) return;
  const State end = free_after(state_, wanted, for_s);
  // It gets no farther than this before it turns.
  const double reach_rad = std::abs(state_.speed_radps) * for_s;
  const bool is_clear = !is_past(end) && state_.angle_rad + reach_rad <= axis_.most_rad &&
                        state_.angle_rad - reach_rad >= axis_.least_rad;
  const auto end_s = is_clear ? std::nullopt : end_of_travel_s(wanted, for_s);
  if (!end_s) {
    state_ = end;
    return;
  }
  const double past_rad = free_after(state_, wanted, *end_s).angle_rad;
  state_ = {std::clamp(past_rad, axis_.least_rad, axis_.most_rad), 0};
  if (!stays()) state_ = free_after(state_, wanted, for_s - *end_s);
}

void FollowedMotion::take_place(double place_rad, double speed_radps, double for_s) {
  const double pieces =
      std::clamp(std::ceil(kPiecesOfGain * axis_.gain_1ps * for_s), 1.0, kMostPieces);
  const double piece_s = for_s / pieces;
  for (int i = 0; i < static_cast<int>(pieces); ++i) {
    // The command of the piece's middle, so that the error goes with the square of its length.
    const double middle_s = (i + 0.5) * piece_s;
    const double place = place_rad + speed_radps * middle_s;
    const double angle = state_.angle_rad + state_.speed_radps * piece_s / 2;
    take_speed(axis_.gain_1ps * (place - angle) + speed_radps, piece_s);
  }
}

}  // namespace gazewright
