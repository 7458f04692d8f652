#include "app/plots/charts.h"
#include "app/plots/text.h"

namespace gazewright {

Chart margins_chart(const PlotInput&) {
  Chart chart = chart_parts::empty_chart(PlotKind::margins, {Plots::tr("Margin"), Plots::tr("%")},
                                         {QString(), QString()});
  chart.message = chart_parts::nothing_yet();
  return chart;
}

}  // namespace gazewright
