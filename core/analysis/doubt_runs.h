#pragma once

#include <array>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/analysis/unknowns.h"

/// The analyses that doubts rest on. Used by doubts_of() and its tests only.
namespace gazewright {

/// Ids of the headline figures, axis by axis, in their order.
std::vector<std::string> doubted_ids();

/// What one analysis says.
struct Outcome {
  std::vector<std::optional<double>> values;    ///< by doubted_ids()
  std::vector<std::string> because;             ///< the same: why there is none
  std::array<std::vector<double>, 2> step_rad;  ///< angles by Axis; empty: none
  std::array<bool, 2> runs_away{};              ///< the step, by Axis
};
struct DoubtRuns {
  Outcome nominal;                 ///< by the same quick analysis
  std::vector<Outcome> low, high;  ///< by unknown
};

/// Analyses the rig as it is and with each unknown at both of its ends.
/// @param threads  how many work, 1 or more; the result is the same
/// @returns empty where a stop was asked for
std::optional<DoubtRuns> run_doubts(const Rig& rig, const std::vector<FoundUnknown>& unknowns,
                                    int threads, const std::stop_token& stop);

/// doubts_of() on that many threads.
Doubts doubts_with(const Rig& rig, const Analysis& analysis, int threads,
                   const std::stop_token& stop = {});

}  // namespace gazewright
