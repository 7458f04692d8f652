#include <cmath>

#include "core/rig/fields.h"
#include "core/units/units.h"
#include "core/words/words.h"

namespace gazewright {

std::string range_problem(const FieldInfo& info, double value_si) {
  const auto said = [&](double si) { return written_quantity(si, info, info.unit); };
  if (std::isnan(value_si)) return words("not a number");
  if (std::isinf(value_si)) {
    if (info.may_be_none && value_si > 0) return "";
    return words("not a finite number");
  }
  if (info.si_unit == "kg" && value_si < 0)
    return words("%1 is negative; a mass cannot be negative", said(value_si));
  if (info.above_least && value_si <= info.least)
    return words("%1 is not allowed: it must be above %2", said(value_si), said(info.least));
  if (value_si < info.least)
    return words("%1 is below the least allowed, %2", said(value_si), said(info.least));
  if (value_si > info.most)
    return words("%1 is above the most allowed, %2", said(value_si), said(info.most));
  if (info.whole && value_si != std::floor(value_si))
    return words("%1 is not a whole number", said(value_si));
  return "";
}

}  // namespace gazewright
