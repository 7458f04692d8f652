#pragma once

#include <QString>

#include "core/analysis/doubts.h"
#include "core/analysis/explain.h"

/// Explanations as rich text. Links are "field:pan.motor.mass", "figure:pan.move.time",
/// "handbook:motion.md#section". Nothing is computed here.
namespace gazewright {

QString figure_name(const Figure& figure);   ///< "Rise time, pan"
QString figure_value(const Figure& figure);  ///< "148 ms", "unknown"

/// @param doubts  of the same analysis; null: not there
QString explanation_of(const Explanation& figure, const Rig& rig, const Doubts* doubts = nullptr);
QString explanation_of(const Finding& finding, const Rig& rig, const Analysis& analysis);
/// Of a field: its value, where it is from, its range, and what stands on it.
QString explanation_of_field(const Rig& rig, const Analysis& analysis, const std::string& path);

QString source_word(Source source);  ///< "measured"; "source not stated"

}  // namespace gazewright
