#pragma once

#include "app/plots/plot_view.h"
#include "tests/support/owl_rig.h"

/// What the plots' tests share: the owl as a plot takes it, analysed once.
namespace gazewright::tests {

struct Shown {
  Rig rig = owl();
  Analysis analysis = analyse(rig, {.remedies = false});
  PlotInput input;
  Shown() {
    input.rig = &rig;
    input.now = &analysis;
  }
};
inline const Shown& shown() {
  static const Shown all;
  return all;
}

}  // namespace gazewright::tests
