#include "core/travel/impact.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gazewright {
namespace {

// Steps of order 4, 50 a radian of the fastest swing: between two of them hides 1 − cos(1/100),
// 5e-5 of its peak. One in which the stop's spring changes is taken again in parts.
constexpr double kStepsPerRadian = 50, kMostSteps = 12500;
constexpr int kParts = 16;
constexpr double kLongest_rad = 1.5 * std::numbers::pi;  // of the slow swing: blow and back

/// Load and rotor while the load presses into the stop; angles from touching.
struct BlowState {
  double load_rad = 0, rotor_rad = 0, load_radps = 0, rotor_radps = 0;
};

struct Blow {
  const StopSpring& stop;
  const SprungTrain& train;
  double push_Nm, given_back;  ///< share of the stop's torque on the way out

  double stop_Nm(const BlowState& s) const {
    if (s.load_rad <= 0) return 0;
    const double soft = std::min(s.load_rad, stop.bumper_travel_rad);
    const double beyond = s.load_rad - soft;
    const double torque =
        stop.stiffness_Nmprad * soft + (beyond > 0 ? stop.hard_stiffness_Nmprad * beyond : 0);
    return s.load_radps < 0 ? given_back * torque : torque;
  }
  /// Which spring bears, and which way: the torque has kinks and jumps between them.
  int spring_of(const BlowState& s) const {
    return (s.load_rad > 0 ? 1 : 0) + (s.load_rad > stop.bumper_travel_rad ? 2 : 0) +
           (s.load_radps < 0 ? 4 : 0);
  }
  double gear_Nm(const BlowState& s) const {
    return train.gear_stiffness_Nmprad * (s.rotor_rad - s.load_rad);
  }
  BlowState slope(const BlowState& s) const {
    return {s.load_radps, s.rotor_radps, (gear_Nm(s) - stop_Nm(s)) / train.load_kgm2,
            (push_Nm - gear_Nm(s)) / train.rotor_kgm2};
  }
  static BlowState moved(const BlowState& s, const BlowState& slope, double dt) {
    return {s.load_rad + dt * slope.load_rad, s.rotor_rad + dt * slope.rotor_rad,
            s.load_radps + dt * slope.load_radps, s.rotor_radps + dt * slope.rotor_radps};
  }
  /// One Runge-Kutta step of order 4. @param is_smooth  whether one spring bore all of it.
  BlowState after(const BlowState& s, double dt, bool* is_smooth = nullptr) const {
    const BlowState a = slope(s), second = moved(s, a, dt / 2);
    const BlowState b = slope(second), third = moved(s, b, dt / 2);
    const BlowState c = slope(third), fourth = moved(s, c, dt), d = slope(fourth);
    const BlowState end = moved(moved(moved(moved(s, a, dt / 6), b, dt / 3), c, dt / 3), d, dt / 6);
    if (is_smooth != nullptr) {
      const auto same = [&](const BlowState& other) { return spring_of(other) == spring_of(s); };
      *is_smooth = same(second) && same(third) && same(fourth) && same(end);
    }
    return end;
  }
};

struct Rates {
  double fast_radps, slow_radps;
};
/// The fastest swing of the pressed train, with the stiffer stage, and the slowest, with the
/// softer.
Rates rates_of(const StopSpring& stop, const SprungTrain& train) {
  const double soft = stop.stiffness_Nmprad, gear = train.gear_stiffness_Nmprad;
  const double hard =
      std::isinf(stop.bumper_travel_rad) ? soft : std::max(soft, stop.hard_stiffness_Nmprad);
  const double rotor = gear / train.rotor_kgm2;
  const auto fast = [&](double stop_Nmprad) {
    const double load = (stop_Nmprad + gear) / train.load_kgm2;
    const double half =
        std::hypot((load - rotor) / 2, gear / std::sqrt(train.load_kgm2 * train.rotor_kgm2));
    return std::sqrt((load + rotor) / 2 + half);
  };
  // The product of both rates from the determinant: nothing cancels.
  return {fast(hard), std::sqrt(soft / train.load_kgm2 * rotor) / fast(soft)};
}

}  // namespace

Impact impact_of(const StopSpring& stop, double inertia_kgm2, double speed_radps, double push_Nm) {
  const double k = stop.stiffness_Nmprad, energy_J = inertia_kgm2 * speed_radps * speed_radps / 2;
  const double soft_Nm = push_Nm + std::sqrt(push_Nm * push_Nm + 2 * k * energy_J);
  if (soft_Nm / k <= stop.bumper_travel_rad) return {soft_Nm, soft_Nm / k, false};
  // What is left at the end of the bumper goes into the second spring, which starts at k·b:
  // ½h·y² + (k·b − T)·y = E + T·b − ½k·b².
  const double b = stop.bumper_travel_rad, hard = stop.hard_stiffness_Nmprad;
  const double against_Nm = k * b - push_Nm;
  const double left_J = std::max(0.0, energy_J + push_Nm * b - k * b * b / 2);
  const double root_Nm = std::sqrt(against_Nm * against_Nm + 2 * hard * left_J);
  return {push_Nm + root_Nm, b + (root_Nm - against_Nm) / hard, true};
}

double gear_torque_Nm(double stop_torque_Nm, double push_Nm, double load_kgm2, double rotor_kgm2) {
  return (stop_torque_Nm * rotor_kgm2 + push_Nm * load_kgm2) / (load_kgm2 + rotor_kgm2);
}

std::optional<SprungImpact> sprung_impact(const StopSpring& stop, const SprungTrain& train,
                                          double speed_radps, double push_Nm, double rebound) {
  const auto [fast_radps, slow_radps] = rates_of(stop, train);
  const double steps = std::ceil(kStepsPerRadian * fast_radps / slow_radps * kLongest_rad);
  if (!(steps <= kMostSteps)) return std::nullopt;
  const double dt = kLongest_rad / slow_radps / steps;
  Blow blow{stop, train, push_Nm, rebound * rebound};
  const double total_kgm2 = train.load_kgm2 + train.rotor_kgm2;
  // The push speeds up both before they touch: the gear is wound by the load's share of it.
  BlowState state{0, push_Nm * train.load_kgm2 / total_kgm2 / train.gear_stiffness_Nmprad,
                  speed_radps, speed_radps};
  SprungImpact peak;
  const auto go_to = [&](const BlowState& next) {
    state = next;
    peak.stop_torque_Nm = std::max(peak.stop_torque_Nm, blow.stop_Nm(state));
    peak.gear_torque_Nm = std::max(peak.gear_torque_Nm, blow.gear_Nm(state));
  };
  for (int i = 0; i < static_cast<int>(steps); ++i) {
    bool is_smooth = false;
    const BlowState next = blow.after(state, dt, &is_smooth);
    if (is_smooth) {
      go_to(next);
    } else {
      for (int part = 0; part < kParts; ++part) go_to(blow.after(state, dt / kParts));
    }
  }
  return peak;
}

double gear_torque_at_hard_stop_Nm(const SprungTrain& train, double speed_radps, double rebound) {
  return speed_radps * std::sqrt(train.gear_stiffness_Nmprad *
                                 (train.rotor_kgm2 + rebound * rebound * train.load_kgm2));
}

}  // namespace gazewright
