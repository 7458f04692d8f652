#pragma once

#include <optional>
#include <string>

#include "core/analysis/doubt_runs.h"

/// How the changes of a figure add up. Used by doubts_of() only.
namespace gazewright {

/// Mean square of what the two ends change. Of a straight line that is what either end changes; a
/// change the same way at both ends, which half of their difference would miss, counts in full.
double mean_square(double low_change, double high_change);
/// Expanded uncertainty (k = 2) of what evenly spread unknowns change, from the sum of their mean
/// squares.
double expanded(double mean_square);

/// @param figure  its place in doubted_ids(); known in the nominal run
/// @param value   of the figure, SI
/// @returns empty where no unknown moves it, or all together by less than a millionth of it
std::optional<DoubtedFigure> doubted_figure(const DoubtRuns& runs, std::size_t figure,
                                            const std::string& id, double value);

}  // namespace gazewright
