#pragma once

#include <QString>

#include "core/analysis/compare.h"

/// Cells of a comparison of variants as people read them, for window and sheet.
namespace gazewright {

/// "148 ms", "coil", "none", "–".
QString compared_text(const CompareRow& row, const CompareCell& cell);
/// Against the present design, with its sign: "−12 ms", "+3 points" of percents; "differs" where
/// there is no number for it. @pre the cell differs
QString difference_text(const CompareRow& row, const CompareCell& cell);

}  // namespace gazewright
