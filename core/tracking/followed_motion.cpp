#include "core/tracking/followed_motion.h"

#include <algorithm>
#include <cmath>

namespace gazewright {
namespace {

constexpr double kPiecesOfGain = 50;  // pieces in 1/gain
constexpr double kMostPieces = 100;

}  // namespace

void FollowedMotion::take_speed(double command_radps, double for_s) {
  const double limit = axis_.speed_limit_radps, most = axis_.acceleration_limit_radps2;
  const double wanted = std::clamp(command_radps, -limit, limit);
  double gap = wanted - speed_radps_;
  // The lag asks for gap/lag: at first as much as the axis can do.
  const double beyond = std::abs(gap) - most * axis_.lag_s;
  if (beyond > 0) {
    const double hard_s = std::min(beyond / most, for_s);
    const double acceleration = std::copysign(most, gap);
    angle_rad_ += (speed_radps_ + acceleration * hard_s / 2) * hard_s;
    speed_radps_ += acceleration * hard_s;
    for_s -= hard_s;
    gap = wanted - speed_radps_;
  }
  if (for_s <= 0) return;
  const double taken_up = axis_.lag_s > 0 ? -std::expm1(-for_s / axis_.lag_s) : 1;
  angle_rad_ += wanted * for_s - gap * axis_.lag_s * taken_up;
  speed_radps_ += gap * taken_up;
}

void FollowedMotion::take_place(double place_rad, double speed_radps, double for_s) {
  const double pieces =
      std::clamp(std::ceil(kPiecesOfGain * axis_.gain_1ps * for_s), 1.0, kMostPieces);
  const double piece_s = for_s / pieces;
  for (int i = 0; i < static_cast<int>(pieces); ++i) {
    // The command of the piece's middle, so that the error goes with the square of its length.
    const double middle_s = (i + 0.5) * piece_s;
    const double place = place_rad + speed_radps * middle_s;
    const double angle = angle_rad_ + speed_radps_ * piece_s / 2;
    take_speed(axis_.gain_1ps * (place - angle) + speed_radps, piece_s);
  }
}

}  // namespace gazewright
