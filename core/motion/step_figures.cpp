#include <algorithm>
#include <cmath>

#include "core/motion/step.h"

namespace gazewright {
namespace {

AngleAt row(const Trace& trace, std::size_t k) { return {trace.time_s[k], trace.angle_rad[k]}; }

/// Time at which the angle passes `level` between two rows.
double passing_time_s(AngleAt a, AngleAt b, double level_rad) {
  const double from = a.angle_rad, to = b.angle_rad;
  const double part = to == from ? 1 : std::clamp((level_rad - from) / (to - from), 0.0, 1.0);
  return a.time_s + part * (b.time_s - a.time_s);
}

/// First time at which the angle has come `part` of the move.
std::optional<double> reached_s(const Trace& trace, double move_rad, double part) {
  for (std::size_t k = 0; k + 1 < trace.angle_rad.size(); ++k)
    if (trace.angle_rad[k + 1] / move_rad >= part)
      return passing_time_s(row(trace, k), row(trace, k + 1), part * move_rad);
  return {};
}

std::optional<double> settle_time_s(const Trace& trace, double move_rad, double band_rad) {
  const auto outside = [&](double angle_rad) { return std::abs(angle_rad - move_rad) > band_rad; };
  std::size_t k = trace.angle_rad.size();
  while (k > 0 && !outside(trace.angle_rad[k - 1])) --k;
  if (k == 0) return 0;
  if (k == trace.angle_rad.size() || trace.time_s[k - 1] >= kLatestSettling * trace.time_s.back())
    return {};
  return settling_s(row(trace, k - 1), row(trace, k), move_rad, band_rad);
}

double largest(const std::vector<double>& values) {
  double most = 0;
  for (const double value : values) most = std::max(most, std::abs(value));
  return most;
}

}  // namespace

double settling_s(AngleAt outside, AngleAt next, double move_rad, double band_rad) {
  const double side = outside.angle_rad < move_rad ? -1 : 1;
  return passing_time_s(outside, next, move_rad + side * band_rad);
}

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
