#pragma once

#include <algorithm>

namespace gazewright {

struct Interval {
  double least = 0, most = 0;
};

/// Largest value of a smooth function over an interval: a scan of 181 points, then golden sections
/// around the best one until the place is known to 1e-9 of the interval. Finds the largest peak as
/// long as peaks are wider than 1/90 of the interval.
template <class Function>
double largest_over(const Interval& range, Function f) {
  constexpr int kPoints = 181;
  const double step = (range.most - range.least) / (kPoints - 1);
  double best = f(range.least);
  if (step <= 0) return best;
  int at = 0;
  for (int i = 1; i < kPoints; ++i) {
    const double value = f(range.least + i * step);
    if (value > best) best = value, at = i;
  }
  constexpr double kGolden = 0.6180339887498949;
  double a = range.least + std::max(0, at - 1) * step;
  double b = range.least + std::min(kPoints - 1, at + 1) * step;
  for (int i = 0; i < 40; ++i) {
    const double c = b - kGolden * (b - a);
    const double d = a + kGolden * (b - a);
    const double fc = f(c), fd = f(d);
    best = std::max({best, fc, fd});
    (fc > fd ? b : a) = fc > fd ? d : c;
  }
  return best;
}

}  // namespace gazewright
