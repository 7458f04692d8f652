#include <algorithm>
#include <cmath>

#include "core/motion/step.h"

namespace gazewright {
namespace {

// A step is taken as settled where the rest of the horizon shows it: 30 % of it inside the band.
constexpr double kLatestPart = 0.7;

/// Time at which the angle passes `level` between rows k and k + 1.
double passing_time_s(const Trace& trace, std::size_t k, double level_rad) {
  const double from = trace.angle_rad[k], to = trace.angle_rad[k + 1];
  const double part = to == from ? 1 : std::clamp((level_rad - from) / (to - from), 0.0, 1.0);
  return trace.time_s[k] + part * (trace.time_s[k + 1] - trace.time_s[k]);
}

/// First time at which the angle has come `part` of the move.
std::optional<double> reached_s(const Trace& trace, double move_rad, double part) {
  for (std::size_t k = 0; k + 1 < trace.angle_rad.size(); ++k)
    if (trace.angle_rad[k + 1] / move_rad >= part) return passing_time_s(trace, k, part * move_rad);
  return {};
}

std::optional<double> settle_time_s(const Trace& trace, double move_rad, double band_rad) {
  const auto outside = [&](double angle_rad) { return std::abs(angle_rad - move_rad) > band_rad; };
  std::size_t k = trace.angle_rad.size();
  while (k > 0 && !outside(trace.angle_rad[k - 1])) --k;
  if (k == 0) return 0;
  if (k == trace.angle_rad.size() || trace.time_s[k - 1] >= kLatestPart * trace.time_s.back())
    return {};
  const double side = trace.angle_rad[k - 1] < move_rad ? -1 : 1;
  return passing_time_s(trace, k - 1, move_rad + side * band_rad);
}

double largest(const std::vector<double>& values) {
  double most = 0;
  for (const double value : values) most = std::max(most, std::abs(value));
  return most;
}

}  // namespace

StepFigures step_figures(const Trace& trace, double move_rad, double band_rad) {
  StepFigures figures;
  figures.peak_current_A = largest(trace.current_A);
  figures.peak_speed_radps = largest(trace.speed_radps);
  figures.settle_time_s = settle_time_s(trace, move_rad, band_rad);
  if (move_rad == 0) return figures;
  const auto start_s = reached_s(trace, move_rad, 0.1), end_s = reached_s(trace, move_rad, 0.9);
  if (start_s && end_s) figures.rise_time_s = *end_s - *start_s;
  for (const double angle_rad : trace.angle_rad)
    figures.overshoot = std::max(figures.overshoot, angle_rad / move_rad - 1);
  return figures;
}

}  // namespace gazewright
