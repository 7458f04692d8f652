#pragma once

#include "app/plots/chart.h"

/// A chart's curves less those of a variant that lies under them.
namespace gazewright {

/// Present design less the variant `name`, over the present design's samples: the variant's line is
/// interpolated linearly between its own, and beyond its ends there is a gap, never a number. Marks
/// of values, limits and bands of the y axis are left out; those of a place on x stay. The chart as
/// it is where `name` is empty or none of its variants, or where no_difference says why not.
Chart difference_of(const Chart& chart, const QString& name);

/// y of a line at x, linear between the samples beside it. NaN beyond its ends, in a gap and for a
/// path. @pre its x is sorted
double value_at(const Series& series, double x);

/// The variant that follows `name` in a round through all of them and none (empty).
QString next_variant(const Chart& chart, const QString& name);

/// "Pan less “low ratio”" in a chart of differences, else "Pan": a line's name where no title of an
/// axis says the rest.
QString said_name(const Chart& chart, const QString& name);

}  // namespace gazewright
