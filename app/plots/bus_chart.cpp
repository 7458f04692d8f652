#include "app/plots/charts.h"
#include "app/plots/text.h"

namespace gazewright {

Chart bus_chart(const PlotInput&) {
  Chart chart = chart_parts::empty_chart(PlotKind::bus, {Plots::tr("Time"), Plots::tr("ms")},
                                         {Plots::tr("Current"), Plots::tr("A")});
  chart.message = chart_parts::nothing_yet();
  return chart;
}

}  // namespace gazewright
