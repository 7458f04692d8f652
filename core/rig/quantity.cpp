#include "core/rig/quantity.h"

#include <limits>

namespace gazewright {

double Quantity::value() const { return si.value_or(std::numeric_limits<double>::quiet_NaN()); }

Quantity si_quantity(double value_si, Source source) {
  Quantity q;
  q.si = value_si;
  q.source = source;
  return q;
}

const char* name_of(Source source) {
  switch (source) {
    case Source::unstated:
      return "unstated";
    case Source::measured:
      return "measured";
    case Source::datasheet:
      return "datasheet";
    case Source::estimate:
      return "estimate";
    case Source::by_default:
      return "default";
  }
  return "unstated";
}

}  // namespace gazewright
