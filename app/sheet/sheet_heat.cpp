#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "app/sheet/sheet_table.h"

/// How long each motor bears which current, and the duty that the temperatures belong to.
namespace gazewright {
namespace {

QString time_text(const std::optional<double>& time_s) {
  if (!time_s) return Plots::tr("without end");
  return format_value(*time_s, "s", *time_s < 120 ? "s" : "min");
}

TableRow row_of(const HeatCurve& curve, const TimeAtCurrent& times, double limit_A) {
  const TextStyle plain{7.5};
  QString what = format_value(times.of_lasting, "1", "1") + QStringLiteral(" ×");
  if (times.current_A == limit_A) what += Plots::tr(", the drive's limit");
  TableRow row;
  row.cells = {{what, plain, {}},
               {format_value(times.current_A, "A", "A"), plain, {}},
               {time_text(times.turning_s), plain, {}},
               {curve.runs_away ? QStringLiteral("–") : time_text(times.warm_s), plain, {}},
               {time_text(times.stalled_s), plain, {}}};
  return row;
}

double limit_of(const Rig& rig, Axis axis) {
  const AxisParts& parts = rig.axis(axis);
  return std::min(parts.drive.current_limit_A.value(), parts.motor.peak_current_A.value());
}

}  // namespace

void draw_heat(SheetPage& page, const SheetContent& content) {
  std::vector<TableRow> rows;
  QStringList duties;
  for (const Axis axis : kAxes) {
    const HeatCurve& curve = content.analysis.heat[static_cast<std::size_t>(axis)];
    if (!curve.duty.empty())
      duties << QStringLiteral("%1: %2.").arg(axis_word(axis), QString::fromStdString(curve.duty));
    if (curve.times.empty()) continue;
    rows.push_back({Plots::tr("%1, winding limit %2")
                        .arg(axis_word(axis), format_value(curve.winding_limit_K, "K", "degC")),
                    {}});
    for (const TimeAtCurrent& times : curve.times)
      rows.push_back(row_of(curve, times, limit_of(content.rig, axis)));
  }
  if (duties.isEmpty()) return;
  page.ensure(100);
  page.heading(Plots::tr("Heat"));
  page.paragraph(
      duties.join(' ') +
          Plots::tr(" Times until the winding is at its limit: turning from the air's temperature "
                    "and from the hottest moment of the duty, standing with one winding under "
                    "full current. Currents are phase amplitudes. They come from a model with "
                    "two heat capacities; set the drive's thermal trip below them and measure."),
      {7.5, false, page.theme().quiet});
  if (rows.empty()) return;
  draw_table(page,
             {{Plots::tr("Of the lasting current"), 1.6, false},
              {Plots::tr("Current"), 1, true},
              {Plots::tr("Turning, cold"), 1, true},
              {Plots::tr("Turning, warm"), 1, true},
              {Plots::tr("Standing, cold"), 1, true}},
             rows);
}

}  // namespace gazewright
