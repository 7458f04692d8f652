#pragma once

#include <QString>

#include "core/analysis/doubts.h"

/// Doubts as people read them, for window and sheet.
namespace gazewright {

/// "118 g·cm² ±10 %"; "30 °C ±2 K" where percents mean nothing.
QString doubted_value(const Unknown& unknown);
/// The word for its source, and that its spread is the usual one where the file states none.
QString doubted_source(const QString& source_word, const Unknown& unknown);
QString share_text(double share);  ///< "34 %"

/// Whether it is off by a thousandth of its value or more, or by nobody knows how much.
bool matters(const DoubtedFigure& figure);
/// "±6 ms", "±2 points" of percents. @pre the figure is of that info
QString plus_minus(const DoubtedFigure& figure, const FigureInfo& info);
/// The same by id, "±6 ms or more" where an end has no value; empty where it is not in doubt.
QString plus_minus(const Doubts& doubts, const Analysis& analysis, std::string_view id);
/// "41 ms to 49 ms"; an end without a figure says so.
QString shift_text(const Shift& shift, const FigureInfo& info);
QString plus_minus_meaning();  ///< what ± stands for, a sentence

}  // namespace gazewright
