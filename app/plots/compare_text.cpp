#include "app/plots/compare_text.h"

#include <cmath>

#include "app/plots/format.h"
#include "app/plots/text.h"

namespace gazewright {

QString compared_text(const CompareRow& row, const CompareCell& cell) {
  if (row.is_words() && !cell.word.empty()) return worded(cell.word);
  return row.is_words() ? format_value(std::nullopt, "1", "1")
                        : format_value(cell.value, row.si_unit, row.unit);
}

QString difference_text(const CompareRow& row, const CompareCell& cell) {
  const CompareCell& present = row.cells.front();
  const bool are_numbers = !row.is_words() && cell.value && present.value;
  const double by = are_numbers ? *cell.value - *present.value : 0;
  if (by == 0 || !std::isfinite(by)) return Plots::tr("differs");
  const std::string_view unit = unit_of_difference(row.unit);
  const QString text = row.unit == "%"
                           ? Plots::tr("%1 points").arg(number_text(100 * by))
                           : format_value(by, unit == row.unit ? row.si_unit : unit, unit);
  return by > 0 ? '+' + text : text;
}

}  // namespace gazewright
