#pragma once

#include <vector>

#include "app/plots/plot_view.h"
#include "core/analysis/analysis.h"
#include "core/rig/fields.h"
#include "tests/support/owl_rig.h"

/// The owl beside a variant of it, for charts that show both.
namespace gazewright::tests {

inline Rig with_ratio(double ratio) {
  Rig rig = owl();
  rig.pan.gearbox.ratio = si_quantity(ratio);
  return rig;
}

struct Two {
  Rig rig = owl();
  Analysis now = analyse(rig, {.remedies = false});
  Analysis low = analyse(with_ratio(9), {.remedies = false});
  std::vector<VariantCurves> variants{{QStringLiteral("low ratio"), &low},
                                      {QStringLiteral("as it is"), &now}};
  PlotInput input() const {
    PlotInput in;
    in.rig = &rig;
    in.now = &now;
    in.variants = variants;
    return in;
  }
};
inline const Two& two() {
  static const Two both;
  return both;
}

}  // namespace gazewright::tests
