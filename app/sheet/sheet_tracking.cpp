#include "app/plots/charts.h"
#include "app/plots/choice_word.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "app/sheet/sheet_table.h"
#include "core/rig/fields.h"

/// The detectors side by side: what the outer loop may be set to, and what comes of it.
namespace gazewright {
namespace {

TableCell cell(double value, std::string_view si_unit, std::string_view unit) {
  return {format_value(value, si_unit, unit), {7.5}, {}};
}

TableRow row_of(const DetectorRun& run) {
  const OuterLoop &pan = run.loop[0], &tilt = run.loop[1];
  TableRow row;
  row.cells = {{QString::fromStdString(run.name), {7.5}, {}},
               cell(run.frame_rate_Hz, "Hz", "Hz"),
               cell(run.delay_s, "s", "ms"),
               cell(pan.gain_1ps, "1/s", "1/s"),
               cell(pan.gain_ceiling_1ps, "1/s", "1/s"),
               cell(tilt.gain_1ps, "1/s", "1/s"),
               cell(tilt.gain_ceiling_1ps, "1/s", "1/s"),
               cell(run.rms_px, "1", "px"),
               cell(run.in_middle, "1", "%"),
               cell(run.blur_px, "1", "px")};
  return row;
}

QString tracking_words(const Rig& rig) {
  const Rig full = with_defaults(rig);
  return Plots::tr(
             "The target %1; the outer loop acts on the %2, with %3 of the target's speed fed "
             "forward. Error: root mean square of the distance from the picture's centre. "
             "Middle: time within the inner third. Smear: less in 95 % of the pictures.")
      .arg(choice_word(full.tracking.target.value), choice_word(full.tracking.acts_on.value),
           format_value(full.tracking.feed_forward.si, "1", "%"));
}

}  // namespace

void draw_tracking(SheetPage& page, const SheetContent& content) {
  page.ensure(80);
  page.heading(Plots::tr("Tracking"));
  const TrackingRuns& runs = content.analysis.tracking;
  if (runs.detectors.empty()) {
    page.paragraph(reason_text(runs.because), {7.5, false, page.theme().quiet});
    return;
  }
  page.paragraph(tracking_words(content.rig), {7.5, false, page.theme().quiet});
  std::vector<TableRow> rows;
  for (const DetectorRun& run : runs.detectors) rows.push_back(row_of(run));
  draw_table(page,
             {{Plots::tr("Detector"), 1.6, false},
              {Plots::tr("Frames"), 1, true},
              {Plots::tr("Delay"), 1, true},
              {Plots::tr("Pan gain"), 1, true},
              {Plots::tr("at most"), 1, true},
              {Plots::tr("Tilt gain"), 1, true},
              {Plots::tr("at most"), 1, true},
              {Plots::tr("Error"), 1, true},
              {Plots::tr("Middle"), 1, true},
              {Plots::tr("Smear"), 1, true}},
             rows);
}

}  // namespace gazewright
