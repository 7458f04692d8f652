#pragma once

#include <algorithm>

namespace gazewright {

struct Interval {
  double least = 0, most = 0;
};

struct Place {
  double at = 0, value = 0;
};

/// Where a smooth function is largest over an interval: a scan of 181 points, then golden sections
/// around the best one until the place is known to 1e-9 of the interval. Finds the largest peak as
/// long as peaks are wider than 1/90 of the interval.
template <class Function>
Place place_of_largest(const Interval& range, Function f) {
  constexpr int kPoints = 181;
  const double step = (range.most - range.least) / (kPoints - 1);
  Place best{range.least, f(range.least)};
  const auto look_at = [&](double place) {
    const double value = f(place);
    if (value > best.value) best = {place, value};
    return value;
  };
  if (step <= 0) return best;
  int at = 0;
  for (int i = 1; i < kPoints; ++i)
    if (const double before = best.value; look_at(range.least + i * step) > before) at = i;
  constexpr double kGolden = 0.6180339887498949;
  double a = range.least + std::max(0, at - 1) * step;
  double b = range.least + std::min(kPoints - 1, at + 1) * step;
  for (int i = 0; i < 40; ++i) {
    const double c = b - kGolden * (b - a);
    const double d = a + kGolden * (b - a);
    const double fc = look_at(c), fd = look_at(d);
    (fc > fd ? b : a) = fc > fd ? d : c;
  }
  return best;
}

template <class Function>
double largest_over(const Interval& range, Function f) {
  return place_of_largest(range, f).value;
}

}  // namespace gazewright
