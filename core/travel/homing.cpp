#include "core/travel/homing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gazewright {
namespace {

constexpr double kTurn_rad = 2 * std::numbers::pi;

}  // namespace

double homing_spacing_rad(double ratio) { return kTurn_rad / ratio; }

double homing_candidates(double travel_rad, double ratio) {
  // A travel that is a whole number of spacings but for rounding counts as that number.
  constexpr double kRounding = 1e-12;
  return std::ceil(travel_rad / homing_spacing_rad(ratio) * (1 - kRounding));
}

double moving_torque_Nm(const Resistance& resistance, double speed_radps) {
  return resistance.coulomb_Nm + resistance.pull_Nm + resistance.drag_Nm +
         resistance.viscous_Nmsprad * speed_radps;
}

PushWindow push_window(const PushLimits& limits) {
  return {limits.moving_Nm / limits.torque_per_ampere_NmpA,
          std::min((limits.gentle_Nm - limits.blow_Nm) / limits.torque_per_ampere_NmpA,
                   limits.current_A)};
}

double homing_time_s(double travel_rad, double speed_radps, bool by_stop) {
  return travel_rad / speed_radps + (by_stop ? kStallTime_s : 0);
}

}  // namespace gazewright
