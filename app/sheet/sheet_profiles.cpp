#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "app/sheet/sheet_table.h"

/// The task's move along every profile, a line each, and which one is best.
namespace gazewright {
namespace {

constexpr const char* kColumns[]{"planned_time", "settle_time", "usable_time", "overshoot",
                                 "peak_current", "rms_current", "ringing_px"};

QString shown(const Analysis& analysis, Axis axis, ProfileKind kind, const char* column) {
  const std::string id =
      std::string(name_of(axis)) + ".profile." + std::string(name_of(kind)) + '.' + column;
  return figure_text(analysis.figure(id));
}

TableRow row_of(const Analysis& analysis, Axis axis, ProfileKind kind) {
  const TextStyle plain{7.5};
  TableRow row;
  row.cells.append({profile_word(kind), plain, {}});
  for (const char* column : kColumns)
    row.cells.append({shown(analysis, axis, kind, column), plain, {}});
  return row;
}

}  // namespace

void draw_profiles(SheetPage& page, const SheetContent& content) {
  std::vector<TableRow> rows;
  QStringList advice;
  for (const Axis axis : kAxes) {
    const AxisProfiles& profiles = content.analysis.profiles[static_cast<std::size_t>(axis)];
    if (profiles.runs.empty()) continue;
    rows.push_back({axis_word(axis), {}});
    for (const ProfileKind kind : kProfiles) rows.push_back(row_of(content.analysis, axis, kind));
    advice << QStringLiteral("%1: %2.").arg(axis_word(axis),
                                            QString::fromStdString(profiles.advice));
  }
  if (rows.empty()) return;
  page.ensure(120);
  page.heading(Plots::tr("Move profiles"));
  page.paragraph(advice.join(' '), {7.5, false, page.theme().text});
  draw_table(page,
             {{Plots::tr("Profile"), 1.6, false},
              {Plots::tr("Planned"), 1, true},
              {Plots::tr("Settled"), 1, true},
              {Plots::tr("Picture usable"), 1.3, true},
              {Plots::tr("Overshoot"), 1, true},
              {Plots::tr("Peak current"), 1.1, true},
              {Plots::tr("RMS current"), 1.1, true},
              {Plots::tr("Ringing"), 1, true}},
             rows);
}

}  // namespace gazewright
