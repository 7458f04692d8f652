#pragma once

#include <optional>
#include <stop_token>
#include <vector>

#include "core/motion/axis_model.h"

/// Many steps at once: one axis at several gear ratios, in lanes of the processor's widest
/// registers and on several threads. Each is to the last bit the simulation of simulate_step().
namespace gazewright {

struct LaneOptions {
  double move_rad = 0, band_rad = 0, horizon_s = 0.4;
  int threads = 0;    ///< 0: as many as the machine has
  int widest = 8;     ///< lanes in a register, at most; 1: simulate_step() for each
  bool show = false;  ///< give the angles too
};
struct LaneResults {
  std::vector<std::optional<double>> settle_time_s;  ///< of each ratio, as step_figures() has it
  std::vector<std::vector<double>> angle_rad;        ///< as Trace has them; empty unless wanted
};
LaneResults step_lanes(const AxisModel& model, const std::vector<double>& ratios,
                       const LaneOptions& options, const std::stop_token& stop = {});

/// Lanes in the widest register that this machine has and the program uses; 1 for none.
int widest_lanes();

}  // namespace gazewright
