#include "app/plots/charts.h"
#include "app/plots/text.h"

namespace gazewright {

Chart gravity_chart(const PlotInput&) {
  Chart chart = chart_parts::empty_chart(PlotKind::gravity, {Plots::tr("Angle"), Plots::tr("deg")},
                                         {Plots::tr("Torque"), Plots::tr("N·m")});
  chart.message = chart_parts::nothing_yet();
  return chart;
}

}  // namespace gazewright
