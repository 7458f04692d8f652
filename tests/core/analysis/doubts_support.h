#pragma once

#include <algorithm>
#include <cmath>
#include <string>

#include "core/analysis/doubts.h"
#include "core/rig/fields.h"
#include "tests/support/owl_rig.h"

/// What the tests of doubts share.
namespace gazewright::tests {

inline void state_spread(Rig& rig, const char* path, double part) {
  Quantity& quantity = *find_quantity(rig, path);
  quantity.spread_si = part * std::abs(*quantity.si);
}
inline Analysis quick(const Rig& rig) { return analyse(rig, {.remedies = false, .quick = true}); }
inline Doubts doubts(const Rig& rig) { return doubts_of(rig, quick(rig)); }

inline const Unknown* unknown(const Doubts& all, const std::string& path) {
  const auto at = std::ranges::find(all.unknowns, path, &Unknown::path);
  return at == all.unknowns.end() ? nullptr : &*at;
}
inline const Shift* shift_by(const Doubts& all, const DoubtedFigure& figure,
                             const std::string& path) {
  const auto at = std::ranges::find_if(
      figure.shifts, [&](const Shift& shift) { return all.unknowns[shift.unknown].path == path; });
  return at == figure.shifts.end() ? nullptr : &*at;
}
/// The owl without loops: no steps to simulate.
inline Rig owl_without_loops() {
  Rig rig = owl();
  for (const Axis axis : kAxes) rig.axis(axis).loop = {};
  return rig;
}

}  // namespace gazewright::tests
