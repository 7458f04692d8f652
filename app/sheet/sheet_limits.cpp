#include "app/plots/charts.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"

namespace gazewright {

void draw_limits(SheetPage& page, const SheetContent& content) {
  page.ensure(80);
  page.heading(Plots::tr("What limits the moves"));
  for (const Axis axis : kAxes) {
    const MoveLimits& limits = content.analysis.limits_of(axis);
    QStringList lines;
    for (const std::string& line : {limits.sentence, limits.fastest}) {
      if (!line.empty()) lines << reason_text(line);
    }
    for (const LimitGain& gain : limits.gains) lines << QString::fromStdString(gain.text());
    for (const QString& line : lines) draw_marked(page, axis, axis_word(axis), line);
  }
}

}  // namespace gazewright
