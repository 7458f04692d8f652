#include "core/heat/duty_types.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/heat/copper.h"

namespace gazewright {
namespace {

constexpr int kMostSteps = 60;

/// The largest current that holds, between the lasting one, which does, and `most_A`.
template <class Holds>
double largest_A(const MotorThermal& motor, double ohm, double limit_K, double most_A,
                 const Holds& holds) {
  const double lasting20_W = lasting_copper20_W(motor, limit_K);
  if (!(lasting20_W > 0)) return 0;
  const auto copper20_W = [ohm](double current_A) { return 1.5 * ohm * current_A * current_A; };
  double low = std::min(std::sqrt(lasting20_W / (1.5 * ohm)), most_A), high = most_A;
  if (holds(copper20_W(high))) return high;
  for (int i = 0; i < kMostSteps && high - low > 1e-14 * high; ++i) {
    const double middle = (low + high) / 2;
    (holds(copper20_W(middle)) ? low : high) = middle;
  }
  return low;
}

}  // namespace

double short_time_current_A(const MotorThermal& motor, double phase_resistance_ohm, double limit_K,
                            double time_s, double most_A) {
  const double air = motor.air_K - kTwentyCelsius_K;
  const auto holds = [&](double copper20_W) {  // it only gets warmer: the end is the hottest
    const Flow<2> flow = thermal_rate(motor, {copper20_W, 0}).over(time_s);
    return flow.after({air, air})[0] <= limit_K - kTwentyCelsius_K;
  };
  return largest_A(motor, phase_resistance_ohm, limit_K, most_A, holds);
}

double intermittent_current_A(const MotorThermal& motor, double phase_resistance_ohm,
                              double limit_K, double on_s, double off_s, double most_A) {
  const auto holds = [&](double copper20_W) {
    const std::array<DutyPiece, 2> pieces{{{on_s, {copper20_W, 0}}, {off_s, {}}}};
    const auto duty = steady_duty(motor, pieces);
    return duty && duty->hottest.winding_K <= limit_K;
  };
  return largest_A(motor, phase_resistance_ohm, limit_K, most_A, holds);
}

}  // namespace gazewright
