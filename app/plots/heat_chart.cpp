#include "app/plots/charts.h"
#include "app/plots/text.h"

namespace gazewright {

Chart heat_chart(const PlotInput&) {
  Chart chart = chart_parts::empty_chart(PlotKind::heat, {Plots::tr("Time"), Plots::tr("min")},
                                         {Plots::tr("Temperature"), Plots::tr("°C")});
  chart.message = chart_parts::nothing_yet();
  return chart;
}

}  // namespace gazewright
