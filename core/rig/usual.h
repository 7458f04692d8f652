#pragma once

#include <string>

#include "core/rig/fields.h"

/// What is usual in a field: the ranges that its help names, as values.
namespace gazewright {

struct UsualRange {
  double least = 0, most = kInfinity;  ///< SI
  double factor = 10;  ///< a value that is further outside than this many times is unusual
  std::string_view least_unit, most_unit;  ///< said in
};

/// Null where the help names no range, or one without a size of its own (a temperature, a part of
/// another value). @param info  a row of the field tables, which is known by its address
const UsualRange* usual_range(const FieldInfo& info);

/// How many times a value lies outside of the range, at least 1; its sign does not matter. A value
/// of 0 or infinity is as good as inside.
double times_outside(const UsualRange& usual, double value_si);

/// "usually 30 g to 1000 g"; empty where no range is known.
std::string usual_words(const FieldInfo& info);
/// "usually 30 g to 1000 g" for a value far outside of that range, else empty.
std::string unusual_words(const FieldInfo& info, double value_si);

}  // namespace gazewright
