#pragma once

#include <vector>

#include "core/supply/worst_moves.h"

/// The first stage of the search: moves of one axis alone.
namespace gazewright {

/// One move with its power in rows of kSingleRow_s.
struct SingleMove {
  double from_rad = 0, move_rad = 0, limit_radps = 0;
  std::vector<double> power_W{};
  double most_W = 0, most_at_s = 0;  ///< drawn
  double most_returned_W = 0, most_returned_at_s = 0;
  double lifted_J = 0, lifted_at_s = 0;  ///< most that is in the capacitors at once

  double end_s() const;
};
inline constexpr double kSingleRow_s = 1e-3;

/// All candidates of an axis, simulated.
std::vector<SingleMove> single_moves(const AxisModel& model, const MoveSpan& span,
                                     double task_move_rad, const std::stop_token& stop);
/// The `count` best by some measure, without moves of the same power.
std::vector<SingleMove> best_of(const std::vector<SingleMove>& moves, std::size_t count,
                                double SingleMove::*by);

}  // namespace gazewright
