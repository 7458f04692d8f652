#pragma once

#include <array>

#include "core/shelf/fit.h"
#include "core/shelf/fit_axis.h"

/// Rows of the answer, with their reasons in words. Used by core/shelf only.
namespace gazewright {

/// @param candidates, fits  by Axis
FitRow fit_row(const std::array<const FitCandidate*, 2>& candidates,
               const std::array<AxisFit, 2>& fits);

}  // namespace gazewright
