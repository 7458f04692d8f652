#include "core/heat/stall.h"

#include <algorithm>
#include <cmath>

#include "core/heat/copper.h"

namespace gazewright {
namespace {

constexpr double kPhases = 3;
constexpr int kMostDoublings = 120, kMostSteps = 60;

/// Worst winding, each of the others, housing, over 20 °C.
LinearRate<3> windings_rate(const MotorThermal& motor, const PhaseLosses& losses) {
  const double per_winding_KpJ = kPhases * motor.to_housing_KpW / motor.winding_time_s;
  const double exchange = 1 / motor.winding_time_s;
  const double per_housing_KpJ = motor.to_air_KpW / motor.housing_time_s;
  const double from_each = per_housing_KpJ / (kPhases * motor.to_housing_KpW);
  const double to_air = 1 / motor.housing_time_s;
  LinearRate<3> rate;
  rate.gain << per_winding_KpJ * losses.worst_W * motor.copper_perK - exchange, 0, exchange, 0,
      per_winding_KpJ * losses.other_W * motor.copper_perK - exchange, exchange, from_each,
      (kPhases - 1) * from_each, -kPhases * from_each - to_air;
  rate.constant << per_winding_KpJ * losses.worst_W, per_winding_KpJ * losses.other_W,
      to_air * (motor.air_K - kTwentyCelsius_K);
  return rate;
}

}  // namespace

MotorThermal with_two_nodes(MotorThermal motor, double part, double winding_time_s) {
  if (motor.has_two_nodes()) return motor;
  motor.to_housing_KpW = part * motor.to_air_KpW;
  motor.to_air_KpW -= motor.to_housing_KpW;
  motor.winding_time_s = winding_time_s;
  return motor;
}

PhaseLosses stalled_losses(double phase_resistance_ohm, double current_A) {
  const double whole_W = phase_resistance_ohm * current_A * current_A;
  return {whole_W, whole_W / 4};
}
PhaseLosses turning_losses(double phase_resistance_ohm, double current_A) {
  const double half_W = phase_resistance_ohm * current_A * current_A / 2;
  return {half_W, half_W};
}

std::optional<Temperatures> steady_windings(const MotorThermal& motor, const PhaseLosses& losses) {
  const double each_KpW = kPhases * motor.to_housing_KpW, grows = motor.copper_perK;
  // Loss of each winding over (1 + α·θ_housing), its own resistance fed back.
  const double worst_left = 1 - each_KpW * losses.worst_W * grows;
  const double other_left = 1 - each_KpW * losses.other_W * grows;
  if (!(worst_left > 0 && other_left > 0)) return std::nullopt;
  const double worst_W = losses.worst_W / worst_left, other_W = losses.other_W / other_left;
  const double all_W = worst_W + (kPhases - 1) * other_W;
  const double left = 1 - motor.to_air_KpW * all_W * grows;
  if (!(left > 0)) return std::nullopt;
  const double housing = (motor.air_K - kTwentyCelsius_K + motor.to_air_KpW * all_W) / left;
  const double winding = housing + each_KpW * worst_W * (1 + grows * housing);
  return Temperatures{winding + kTwentyCelsius_K, housing + kTwentyCelsius_K};
}

double lasting_stall_current_A(const MotorThermal& motor, double phase_resistance_ohm,
                               double limit_K) {
  if (!(limit_K > motor.air_K)) return 0;
  const auto holds = [&](double current_A) {
    const auto at = steady_windings(motor, stalled_losses(phase_resistance_ohm, current_A));
    return at && at->winding_K <= limit_K;
  };
  // The worst winding is at least as hot as when the same current turns.
  const double turning_W = lasting_copper20_W(motor, limit_K);
  double low = 0, high = std::sqrt(turning_W / (1.5 * phase_resistance_ohm));
  if (holds(high)) return high;
  for (int i = 0; i < kMostSteps; ++i) {
    const double middle = (low + high) / 2;
    (holds(middle) ? low : high) = middle;
  }
  return low;
}

std::optional<double> time_to_limit_s(const MotorThermal& motor, const PhaseLosses& losses,
                                      const Temperatures& from, double limit_K) {
  if (from.winding_K >= limit_K) return 0;
  if (const auto end = steady_windings(motor, losses); end && !(end->winding_K > limit_K))
    return std::nullopt;
  const LinearRate<3> rate = windings_rate(motor, losses);
  const double limit = limit_K - kTwentyCelsius_K, winding = from.winding_K - kTwentyCelsius_K;
  const Eigen::Vector3d start{winding, winding, from.housing_K - kTwentyCelsius_K};
  const auto at = [&](double time_s) { return rate.over(time_s).after(start).eval(); };
  double low = 0, high = 1e-3 * std::min(motor.winding_time_s, motor.housing_time_s);
  for (int i = 0; at(high)[0] < limit; ++i, low = high, high *= 4) {
    if (i == kMostDoublings) return std::nullopt;
  }
  double time_s = high;
  for (int i = 0; i < kMostSteps && high - low > 1e-12 * high; ++i) {
    const Eigen::Vector3d x = at(time_s);
    (x[0] < limit ? low : high) = time_s;
    const double newton_s = time_s - (x[0] - limit) / rate.at(x)[0];
    time_s = newton_s > low && newton_s < high ? newton_s : (low + high) / 2;
  }
  return time_s;
}

}  // namespace gazewright
