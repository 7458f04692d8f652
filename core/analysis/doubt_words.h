#pragma once

#include <string>

#include "core/analysis/doubts.h"

/// Sentences about doubts. Used by doubts_of() only.
namespace gazewright {

/// What knowing an unknown exactly would do to a figure: "weighing the camera would take 5 ms of
/// the ±12 ms off tilt's settle time", or whether there is such a figure at all.
/// @param measuring  what would have to be done: "weighing the camera"
/// @param shift    of that unknown, one of the figure's
std::string say_worth(const std::string& measuring, const DoubtedFigure& figure, const Shift& shift,
                      const FigureInfo& info);

}  // namespace gazewright
