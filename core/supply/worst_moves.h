#pragma once

#include <array>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/motion/coupled.h"
#include "core/supply/bus.h"

/// Which moves of both axes load the bus most: a bounded search.
namespace gazewright {

/// Where an axis may begin and end, from the rest pose.
struct MoveSpan {
  double least_rad = 0, most_rad = 0;
};
struct WorstSearch {
  CoupledModel model;
  std::array<MoveSpan, 2> span;  ///< by Axis
  PanTilt task_rad;              ///< tried too
  double idle_W = 0;             ///< that both drives always take
  Bus bus;
  bool by_voltage = true;  ///< false: the bus' capacitors are not known
};

/// One pair of moves, simulated with both axes on one rig and one supply.
struct BusMoves {
  BothMoves moves;
  PanTilt limit_radps;  ///< speed limit of each move
  double row_s = 0;
  std::vector<double> power_W;  ///< a value a row
  double most_A = 0, most_V = 0;
  double most_returned_W = 0, returned_J = 0;
  double lifted_J = 0;  ///< most that capacitors alone would have to take, see lifted_J()
  double most_A_at_s = 0, most_V_at_s = 0;
  PanTilt most_A_pose_rad, most_V_pose_rad;  ///< from the rest pose
};
struct WorstMoves {
  std::vector<BusMoves> tried;           ///< those simulated together
  std::size_t current = 0, voltage = 0;  ///< in `tried`, which has the largest
  int single_moves = 0;                  ///< of one axis alone, looked at before

  const BusMoves& by_current() const { return tried[current]; }
  const BusMoves& by_voltage() const { return tried[voltage]; }
  double most_returned_W() const;  ///< of all tried
  double lifted_J() const;
};

/// 1. Each axis alone, from rest to rest: four sizes up to its span (or to what its speed limit
///    covers in a second), at its speed limit and at half of it, both ways and at both ends and the
///    middle of the span where weight or cable pull; the task's move among them.
/// 2. The two that draw most, return most power and lift the bus most are laid over those of the
///    other axis, shifted in time until the sum is largest.
/// 3. The best pairs, the same begun together, and each alone are simulated with both axes at once.
/// What is not tried: speeds in between, moves cut short by others, moves of more than a second at
/// full speed. Empty where a stop was asked for early.
WorstMoves worst_moves(const WorstSearch& search, const std::stop_token& stop = {});

}  // namespace gazewright
