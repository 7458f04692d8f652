#pragma once

#include <QFontMetricsF>
#include <functional>

#include "app/plots/chart.h"
#include "app/plots/label_places.h"

/// The names of lines, beside the lines themselves: read faster than a legend where they are few.
namespace gazewright {

/// Charts with as many lines keep their legend.
inline constexpr qsizetype kTooManyToName = 5;

struct LineLabel {
  qsizetype series = 0;
  QRectF box;
};

/// Labels beside the right ends of the lines, or as near to them as no line passes through and none
/// lies as near as its own. All that are in view or none, so that either the names or the legend
/// are read. Lines of before and of variants have none. None where there are too many lines or one
/// is a path.
/// @param pixel  of a point of the chart
QVector<LineLabel> line_labels(const Chart& chart, const QFontMetricsF& metrics,
                               const std::function<QPointF(double x, double y)>& pixel,
                               const QRectF& area, LabelPlaces& places);

/// Whether an entry of the legend says nothing that the labels do not say: all lines that it stands
/// for have one. Not of an entry that is switched off, or has no lines.
bool is_said(const LegendEntry& entry, const Chart& chart, const QVector<LineLabel>& labels);

}  // namespace gazewright
