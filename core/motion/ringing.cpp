#include "core/motion/ringing.h"

#include <cmath>

// Derivation: resources/handbook/profiles.md.
namespace gazewright {
namespace {

constexpr double kLongest_s = 30;  // after the trace; what swings longer counts as never still

/// Keeps the last passing out of the band, between samples by a straight line.
class LastOutside {
 public:
  LastOutside(double target_rad, double band_rad) : target_(target_rad), band_(band_rad) {}
  void add(double time_s, double angle_rad) {
    const double off = std::abs(angle_rad - target_);
    if (off > band_) {
      was_outside_ = true;
    } else if (was_outside_) {
      const double part = (last_off_ - band_) / (last_off_ - off);
      passed_s_ = last_s_ + part * (time_s - last_s_);
      was_outside_ = false;
    }
    last_s_ = time_s;
    last_off_ = off;
  }
  std::optional<double> time_s() const {
    return was_outside_ ? std::nullopt : std::optional(passed_s_);
  }

 private:
  double target_, band_, last_s_ = 0, last_off_ = 0, passed_s_ = 0;
  bool was_outside_ = false;
};

}  // namespace

Swing::Swing(const BracketMode& mode, double step_s) : natural_(mode.natural_radps) {
  const double w = natural_, decay = mode.damping_ratio * w;
  const double damped = w * std::sqrt(std::max(0.0, 1 - mode.damping_ratio * mode.damping_ratio));
  const double left = std::exp(-decay * step_s), c = std::cos(damped * step_s);
  const double s = damped * step_s > 1e-9 ? std::sin(damped * step_s) / damped : step_s;
  angle_by_angle_ = left * (c + decay * s);
  angle_by_speed_ = left * s;
  speed_by_angle_ = -left * w * w * s;
  speed_by_speed_ = left * (c - decay * s);
}

void Swing::advance(double acceleration_radps2) {
  const double rest = -acceleration_radps2 / (natural_ * natural_), off = angle_ - rest;
  angle_ = rest + angle_by_angle_ * off + angle_by_speed_ * speed_;
  speed_ = speed_by_angle_ * off + speed_by_speed_ * speed_;
}

double Swing::amplitude_rad() const { return std::hypot(angle_, speed_ / natural_); }

CameraMotion camera_motion(const Trace& trace, const BracketMode& mode, double move_rad,
                           double band_rad, double over_s, std::vector<double>* angle_rad) {
  CameraMotion motion;
  if (trace.time_s.empty()) return motion;
  if (angle_rad != nullptr) *angle_rad = trace.angle_rad;
  const double dt = trace.sample_time_s;
  Swing swing(mode, dt);
  LastOutside outside(move_rad, band_rad);
  outside.add(0, trace.angle_rad[0]);
  bool is_over = over_s <= 0;
  const auto look = [&](double time_s) {
    if (is_over || time_s < over_s) return;
    motion.ringing_rad = swing.amplitude_rad();
    is_over = true;
  };
  for (std::size_t k = 1; k < trace.time_s.size(); ++k) {
    swing.advance((trace.speed_radps[k] - trace.speed_radps[k - 1]) / dt);
    outside.add(trace.time_s[k], trace.angle_rad[k] + swing.angle_rad());
    if (angle_rad != nullptr) (*angle_rad)[k] += swing.angle_rad();
    look(trace.time_s[k]);
  }
  const double end_s = trace.time_s.back(), end_rad = trace.angle_rad.back();
  const double room_rad = band_rad - std::abs(end_rad - move_rad);
  for (std::size_t k = 1; swing.amplitude_rad() > room_rad || !is_over; ++k) {
    const double time_s = end_s + static_cast<double>(k) * dt;
    if (time_s > end_s + kLongest_s) return motion;
    swing.advance(0);
    outside.add(time_s, end_rad + swing.angle_rad());
    look(time_s);
  }
  motion.settle_time_s = outside.time_s();
  return motion;
}

}  // namespace gazewright
