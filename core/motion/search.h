#pragma once

#include <cmath>
#include <utility>

/// Zeros and minima of a function of one number, by few evaluations.
namespace gazewright {

/// Where a function that goes from below to above zero passes it: regula falsi, halving the weight
/// of an end that stays (the Illinois rule, from memory).
template <class Function>
double where_zero(const Function& f, double low, double high, double tolerance) {
  double below = f(low), above = f(high), x = low;
  if (below >= 0) return low;
  int stays = 0;
  for (int i = 0; i < 100 && high - low > tolerance; ++i) {
    const double last = x;
    x = low + (high - low) * below / (below - above);
    if (!(x > low && x < high)) x = (low + high) / 2;
    const double now = f(x);
    if (std::abs(x - last) <= tolerance || now == 0) break;
    if (now < 0) {
      low = x, below = now;
      if (stays > 0) above /= 2;
      stays = 1;
    } else {
      high = x, above = now;
      if (stays < 0) below /= 2;
      stays = -1;
    }
  }
  return x;
}

/// The best places of a minimum search, best first, and the bracket that they leave.
class MinimumSearch {
 public:
  MinimumSearch(double low, double high, double x, double value)
      : low_(low), high_(high), best_{x, value}, second_(best_), third_(best_) {}

  double best() const { return best_.x; }
  bool is_done(double tolerance) const {
    return std::abs(best_.x - middle()) <= 2 * tolerance - (high_ - low_) / 2;
  }
  /// The bottom of the parabola through the three best places where it can be trusted, else a
  /// golden section of the longer side.
  double next(double tolerance) {
    constexpr double kGolden = 0.3819660112501051;
    const double before_last = std::exchange(last_step_, step_);
    const double r = (best_.x - second_.x) * (best_.value - third_.value);
    const double q = (best_.x - third_.x) * (best_.value - second_.value);
    const double over = (best_.x - third_.x) * q - (best_.x - second_.x) * r;
    step_ = -over / (2 * (q - r));
    const double at = best_.x + step_;  // not a number where there is no parabola
    if (!(std::abs(step_) < std::abs(before_last) / 2 && at > low_ && at < high_)) {
      last_step_ = (best_.x < middle() ? high_ : low_) - best_.x;
      step_ = kGolden * last_step_;
    } else if (at - low_ < 2 * tolerance || high_ - at < 2 * tolerance) {
      step_ = std::copysign(tolerance, middle() - best_.x);
    }
    if (std::abs(step_) < tolerance) step_ = std::copysign(tolerance, step_);
    return best_.x + step_;
  }
  void take(double x, double value) {
    const Place now{x, value};
    if (value <= best_.value) {
      (x < best_.x ? high_ : low_) = best_.x;
      third_ = second_, second_ = best_, best_ = now;
      return;
    }
    (x < best_.x ? low_ : high_) = x;
    if (value <= second_.value || second_.x == best_.x) {
      third_ = second_, second_ = now;
    } else if (value <= third_.value || third_.x == best_.x || third_.x == second_.x) {
      third_ = now;
    }
  }

 private:
  struct Place {
    double x, value;
  };
  double middle() const { return (low_ + high_) / 2; }

  double low_, high_, step_ = 0, last_step_ = 0;
  Place best_, second_, third_;
};

/// Place of a minimum between `low` and `high`, known to be near x, where the function has that
/// value. Source: Brent, Algorithms for Minimization without Derivatives, 1973, ch. 5 (from
/// memory).
template <class Function>
double where_least(const Function& f, double low, double high, double x, double value,
                   double tolerance) {
  MinimumSearch search(low, high, x, value);
  for (int i = 0; i < 100 && !search.is_done(tolerance); ++i) {
    const double at = search.next(tolerance);
    search.take(at, f(at));
  }
  return search.best();
}

}  // namespace gazewright
