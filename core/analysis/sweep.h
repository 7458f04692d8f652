#pragma once

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/rig/rig.h"

namespace gazewright {

/// What one axis does at each ratio, everything else as it is. All vectors have the length of
/// `ratio`.
struct RatioSweep {
  std::vector<double> ratio;
  std::vector<std::optional<double>> shortest_time_s, settle_time_s;
  std::vector<double> peak_torque_Nm, top_speed_radps,
      peak_acceleration_radps2;  ///< stall torque at the output, speed_top, acceleration_peak
  std::optional<double> best_time_ratio, best_settle_ratio;
  double band_least = 0,
         band_most =
             0;  ///< ratios whose shortest time is within 5 % of the best; 0, 0 where there is none
  std::string because;  ///< why it is empty ("needs pan.motor.rotor_inertia"); else empty
};
struct SweepOptions {
  bool settle = true;      ///< simulate the closed loop at every ratio
  double horizon_s = 0.4;  ///< of each simulation
  bool is_whole = false;   ///< each watched as long as the step's figures are, kSettleHorizons_s
  int threads = 0;         ///< 0: as many as the machine has
};
RatioSweep sweep_ratio(const Rig& rig, Axis axis, const std::vector<double>& ratios,
                       const SweepOptions& options = {}, const std::stop_token& stop = {});

/// `count` ratios from 1 to 200 with even steps of their logarithm.
std::vector<double> usual_ratios(int count = 200);

}  // namespace gazewright
