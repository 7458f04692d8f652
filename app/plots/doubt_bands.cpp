#include "app/plots/charts.h"
#include "app/plots/text.h"

namespace gazewright {

QString doubt_band_text() { return Plots::tr("±2 standard uncertainties, about 95 %"); }

void chart_parts::add_doubt_bands(Chart& chart, const PlotInput& input) {
  if (input.doubts == nullptr && !input.doubts_come) return;
  chart.legend.append({.text = doubt_band_text(),
                       .axis = {},
                       .line = Line::shaded,
                       .brief = Plots::tr("about 95 %")});
  for (const Axis axis : kAxes) {
    if (input.doubts == nullptr || !shows(input, axis)) continue;
    const StepBand& band = input.doubts->step[std::size_t(axis)];
    if (band.time_s.empty()) continue;
    chart.ribbons.append({.name = axis_word(axis),
                          .axis = axis,
                          .x = scaled(band.time_s, kMsPerS),
                          .low = scaled(band.low_rad, kDegPerRad),
                          .high = scaled(band.high_rad, kDegPerRad)});
  }
  if (!chart.ribbons.isEmpty()) chart.readings << Plots::tr("shaded: %1").arg(doubt_band_text());
}

}  // namespace gazewright
