#include <algorithm>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "app/sheet/sheet_table.h"

namespace gazewright {
namespace {

QString remedy_text(const Finding& finding) {
  constexpr std::size_t kMost = 2;  // the nearest ones; the window shows all
  QStringList lines;
  for (std::size_t i = 0; i < std::min(kMost, finding.remedies.size()); ++i) {
    lines << QString::fromStdString(finding.remedies[i].text);
  }
  return lines.join(QStringLiteral("; "));
}

TableRow row_of(const Finding& finding, const Theme& theme) {
  const auto number = [&](const std::optional<double>& value) {
    return TableCell{format_value(value, finding.si_unit, finding.unit), {7.5}, {}};
  };
  const TextStyle verdict{7.5, true, verdict_colour(theme, finding.verdict)};
  const TextStyle axis{7.5, false,
                       finding.axis ? axis_text_colour(theme, *finding.axis) : theme.text};
  // Without numbers a finding that holds says why, too.
  const bool explain = finding.verdict != Verdict::holds || !finding.margin;
  TableRow row;
  row.cells = {
      {verdict_symbol(finding.verdict) + QStringLiteral(" ") + verdict_word(finding.verdict),
       verdict,
       {}},
      {finding.axis ? axis_word(*finding.axis) : Plots::tr("Both"), axis, {}},
      {QString::fromStdString(finding.what),
       {7.5},
       explain ? reason_text(finding.because) : QString()},
      number(finding.demand),
      number(finding.capacity),
      {margin_text(finding.margin), {7.5}, {}},
      {remedy_text(finding), {7.5}, {}}};
  return row;
}

}  // namespace

void draw_findings(SheetPage& page, const SheetContent& content) {
  page.heading(Plots::tr("Requirements and findings"));
  std::vector<TableRow> rows;
  for (const Finding& finding : content.analysis.findings) {
    rows.push_back(row_of(finding, page.theme()));
  }
  draw_table(page,
             {{Plots::tr("Verdict"), 0.95, false},
              {Plots::tr("Axis"), 0.5, false},
              {Plots::tr("Check"), 3.2, false},
              {Plots::tr("Demand"), 1.05, true},
              {Plots::tr("Capacity"), 1.05, true},
              {Plots::tr("Margin"), 0.8, true},
              {Plots::tr("What would make it hold"), 2.9, false}},
             rows);
}

}  // namespace gazewright
