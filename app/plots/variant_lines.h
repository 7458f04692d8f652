#pragma once

#include <functional>

#include "app/plots/chart.h"

/// The one way in which charts show variants of the rig beside the present design.
namespace gazewright::chart_parts {

bool is_variant(Line line);
bool is_present(Line line);  ///< neither a variant's nor the ghost of the design before a drag
QString short_name(const QString& name);  ///< of a variant, for a label

/// Calls `add` with each variant that is shown and the line it is drawn with.
void for_variants(const PlotInput& input,
                  const std::function<void(const VariantCurves&, Line)>& add);
/// The same with each shown axis of it; the name is "Pan, low ratio". Call it before the lines of
/// the present design, so that they lie on top.
void add_variants(const PlotInput& input,
                  const std::function<void(const Analysis&, Axis, Line, const QString& name)>& add);

/// Names the lines of the variants where each is farthest from the present design's, and says in
/// the readings which they are. Call it last, when the ranges are set.
void label_variants(Chart& chart, const PlotInput& input);

}  // namespace gazewright::chart_parts
