#include <cmath>

#include "core/rig/fields.h"
#include "core/units/units.h"

namespace gazewright {

std::string range_problem(const FieldInfo& info, double value_si) {
  const auto said = [&](double si) { return written_quantity(si, info, info.unit); };
  if (std::isnan(value_si)) return "not a number";
  if (std::isinf(value_si)) {
    if (info.may_be_none && value_si > 0) return "";
    return "not a finite number";
  }
  if (info.si_unit == "kg" && value_si < 0)
    return said(value_si) + " is negative; a mass cannot be negative";
  if (info.above_least && value_si <= info.least)
    return said(value_si) + " is not allowed: it must be above " + said(info.least);
  if (value_si < info.least)
    return said(value_si) + " is below the least allowed, " + said(info.least);
  if (value_si > info.most)
    return said(value_si) + " is above the most allowed, " + said(info.most);
  if (info.whole && value_si != std::floor(value_si))
    return said(value_si) + " is not a whole number";
  return "";
}

}  // namespace gazewright
