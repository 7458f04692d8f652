#include "app/plots/charts.h"
#include "app/plots/text.h"

namespace gazewright {

Chart pointing_chart(const PlotInput&) {
  Chart chart = chart_parts::empty_chart(PlotKind::pointing, {Plots::tr("Error"), Plots::tr("deg")},
                                         {QString(), QString()});
  chart.message = chart_parts::nothing_yet();
  return chart;
}

}  // namespace gazewright
