#pragma once

#include <array>

#include "core/shelf/fit.h"
#include "core/shelf/fit_axis.h"

/// Rows of the answer: reasons in words, and the best simulated. Used by core/shelf only.
namespace gazewright {

/// @param candidates, fits  by Axis
FitRow fit_row(const std::array<const FitCandidate*, 2>& candidates,
               const std::array<AxisFit, 2>& fits);

/// Simulates the first rows in full, with the gains that are advised for their parts, and sorts
/// them by the slower axis' time to move and settle.
void simulate_best(Fits& fits, const Rig& rig, const Shelf& shelf, const FitOptions& options,
                   const std::stop_token& stop);

}  // namespace gazewright
