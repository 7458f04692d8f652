#include "core/heat/thermal_model.h"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>

#include "core/heat/copper.h"

namespace gazewright {
namespace {

using State = Eigen::Vector2d;  // winding and housing over 20 °C

State state_of(const Temperatures& at) {
  return {at.winding_K - kTwentyCelsius_K, at.housing_K - kTwentyCelsius_K};
}
Temperatures temperatures_of(const State& x) {
  return {x[0] + kTwentyCelsius_K, x[1] + kTwentyCelsius_K};
}
Temperatures hotter(const Temperatures& a, const Temperatures& b) {
  return {std::max(a.winding_K, b.winding_K), std::max(a.housing_K, b.housing_K)};
}

/// Parts of one piece: one, unless it is long enough for the temperatures to turn round in it.
constexpr int kPartsOfLongPieces = 8;
int parts_of(const MotorThermal& motor, const DutyPiece& piece) {
  const double quickest_s = motor.has_two_nodes()
                                ? std::min(motor.winding_time_s, motor.housing_time_s)
                                : motor.housing_time_s;
  return piece.time_s > 0.25 * quickest_s ? kPartsOfLongPieces : 1;
}

/// A cycle as flows of its parts.
std::vector<Flow<2>> cycle_of(const MotorThermal& motor, std::span<const DutyPiece> pieces) {
  std::vector<Flow<2>> cycle;
  for (const DutyPiece& piece : pieces) {
    const int parts = parts_of(motor, piece);
    const Flow<2> flow = thermal_rate(motor, piece.losses).over(piece.time_s / parts);
    cycle.insert(cycle.end(), static_cast<std::size_t>(parts), flow);
  }
  return cycle;
}

/// The larger eigenvalue; the flow of temperatures has none below 0, and both are real.
double largest_multiplier(const Eigen::Matrix2d& gain) {
  const double half = gain.trace() / 2;
  return half + std::sqrt(std::max(half * half - gain.determinant(), 0.0));
}

double time_of(std::span<const DutyPiece> pieces) {
  double time_s = 0;
  for (const DutyPiece& piece : pieces) time_s += piece.time_s;
  return time_s;
}

/// The same flow `count` times over.
Flow<2> repeated(Flow<2> flow, long count) {
  Flow<2> all;
  for (; count > 0; count /= 2, flow = flow.then(flow)) {
    if (count % 2 == 1) all = all.then(flow);
  }
  return all;
}

}  // namespace

std::optional<Temperatures> steady_temperatures(const MotorThermal& motor, const Losses& losses) {
  const double grows = motor.all_KpW() * losses.copper20_W * motor.copper_perK;
  if (!(grows < 1)) return std::nullopt;
  const double air = motor.air_K - kTwentyCelsius_K;
  const double winding =
      (air + motor.to_air_KpW * losses.gear_W + motor.all_KpW() * losses.copper20_W) / (1 - grows);
  const double copper_W = losses.copper20_W * (1 + motor.copper_perK * winding);
  return temperatures_of({winding, winding - motor.to_housing_KpW * copper_W});
}

double lasting_copper20_W(const MotorThermal& motor, double limit_K, double gear_W) {
  return (limit_K - motor.air_K - motor.to_air_KpW * gear_W) /
         (motor.all_KpW() * (1 + motor.copper_perK * (limit_K - kTwentyCelsius_K)));
}

double runaway_copper20_W(const MotorThermal& motor) {
  return 1 / (motor.all_KpW() * motor.copper_perK);
}

LinearRate<2> thermal_rate(const MotorThermal& motor, const Losses& losses) {
  const double p = losses.copper20_W, air = motor.air_K - kTwentyCelsius_K;
  const double per_housing_KpJ = motor.to_air_KpW / motor.housing_time_s;  // 1/capacity
  const double to_air_1ps = 1 / motor.housing_time_s;
  LinearRate<2> rate;
  if (!motor.has_two_nodes()) {
    const double winding = per_housing_KpJ * p * motor.copper_perK - to_air_1ps;
    const double constant = per_housing_KpJ * (p + losses.gear_W) + to_air_1ps * air;
    // The housing follows the winding, from the same beginning on exactly.
    rate.gain << winding, 0, winding + to_air_1ps, -to_air_1ps;
    rate.constant << constant, constant;
    return rate;
  }
  const double per_winding_KpJ = motor.to_housing_KpW / motor.winding_time_s;
  const double exchange_1ps = 1 / motor.winding_time_s;
  const double into_housing_1ps = per_housing_KpJ / motor.to_housing_KpW;
  rate.gain << per_winding_KpJ * p * motor.copper_perK - exchange_1ps, exchange_1ps,
      into_housing_1ps, -into_housing_1ps - to_air_1ps;
  rate.constant << per_winding_KpJ * p, per_housing_KpJ * losses.gear_W + to_air_1ps * air;
  return rate;
}

std::optional<DutyTemperatures> steady_duty(const MotorThermal& motor,
                                            std::span<const DutyPiece> pieces) {
  const std::vector<Flow<2>> cycle = cycle_of(motor, pieces);
  Flow<2> whole;
  for (const Flow<2>& part : cycle) whole = whole.then(part);
  if (!(largest_multiplier(whole.gain) < 1)) return std::nullopt;  // not finite either
  const Eigen::Matrix2d left = Eigen::Matrix2d::Identity() - whole.gain;
  const double det = left(0, 0) * left(1, 1) - left(0, 1) * left(1, 0);
  State x{(left(1, 1) * whole.shift[0] - left(0, 1) * whole.shift[1]) / det,
          (left(0, 0) * whole.shift[1] - left(1, 0) * whole.shift[0]) / det};
  DutyTemperatures duty{temperatures_of(x), temperatures_of(x)};
  for (const Flow<2>& part : cycle) {
    x = part.after(x);
    duty.hottest = hotter(duty.hottest, temperatures_of(x));
  }
  if (!std::isfinite(duty.hottest.winding_K)) return std::nullopt;
  return duty;
}

TemperatureRun run_duty(const MotorThermal& motor, std::span<const DutyPiece> pieces,
                        const Temperatures& from, double until_s, int points, double most_K) {
  TemperatureRun run;
  const auto add = [&](double time_s, const Temperatures& at) {
    run.time_s.push_back(time_s);
    run.winding_K.push_back(at.winding_K);
    run.housing_K.push_back(at.housing_K);
    return at.winding_K < most_K;  // false for NaN too
  };
  State x = state_of(from);
  if (!add(0, from)) return run;
  const double cycle_s = time_of(pieces), between_s = until_s / points;
  if (cycle_s > between_s) {
    for (double time_s = 0; time_s < until_s;) {
      for (const DutyPiece& piece : pieces) {
        const int parts =
            std::clamp(static_cast<int>(std::ceil(piece.time_s / between_s)), 1, points);
        const Flow<2> flow = thermal_rate(motor, piece.losses).over(piece.time_s / parts);
        for (int k = 0; k < parts; ++k) {
          x = flow.after(x);
          time_s += piece.time_s / parts;
          if (!add(time_s, temperatures_of(x))) return run;
        }
      }
    }
    return run;
  }
  const std::vector<Flow<2>> cycle = cycle_of(motor, pieces);
  Flow<2> whole;
  for (const Flow<2>& part : cycle) whole = whole.then(part);
  const long cycles = std::max(1L, std::lround(between_s / cycle_s));
  const Flow<2> skipped = repeated(whole, cycles - 1);
  const double step_s = static_cast<double>(cycles) * cycle_s;
  for (double time_s = step_s; time_s < until_s + step_s; time_s += step_s) {
    x = skipped.after(x);
    Temperatures most = temperatures_of(x);
    for (const Flow<2>& part : cycle) {
      x = part.after(x);
      most = hotter(most, temperatures_of(x));
    }
    if (!add(time_s, most)) return run;
  }
  return run;
}

}  // namespace gazewright
