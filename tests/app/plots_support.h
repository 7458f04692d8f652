#pragma once

#include <gtest/gtest.h>

#include "app/plots/charts.h"
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

inline const Series& series_named(const Chart& chart, const QString& name) {
  static const Series none;
  for (const Series& series : chart.series) {
    if (series.name == name) return series;
  }
  ADD_FAILURE() << "no series " << name.toStdString();
  return none;
}

}  // namespace gazewright::tests
