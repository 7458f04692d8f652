#include <algorithm>

#include "app/plots/doubt_text.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "app/sheet/sheet_table.h"
#include "core/analysis/open_verdicts.h"

/// How far to trust the headline figures, and what to measure first.
namespace gazewright {
namespace {

constexpr std::size_t kMostWorth = 5;

QString axis_text(const std::string& id) {
  for (const Axis axis : kAxes)
    if (id.starts_with(std::string(name_of(axis)) + '.')) return axis_word(axis);
  return Plots::tr("both");
}

void draw_uncertainties(SheetPage& page, const SheetContent& content) {
  std::vector<TableRow> rows;
  for (const DoubtedFigure& doubted : content.options.doubts->figures) {
    const Figure* figure = content.analysis.figure(doubted.id);
    if (figure == nullptr || figure->info == nullptr || !matters(doubted)) continue;
    const FigureInfo& info = *figure->info;
    const Shift& largest = doubted.shifts.front();
    const Unknown& unknown = content.options.doubts->unknowns[largest.unknown];
    const QString least =
        doubted.is_known_whole ? QString() : Plots::tr("or more: at an end it has no value");
    TableRow row;
    row.cells = {{worded(info.label), {7.5}, {}},
                 {axis_text(doubted.id), {7.5}, {}},
                 {format_value(figure->value, info.si_unit, info.unit), {7.5}, {}},
                 {plus_minus(doubted, info), {7.5, true}, least},
                 {worded(unknown.label), {7.5}, shift_text(largest, info)}};
    rows.push_back(row);
  }
  draw_table(page,
             {{Plots::tr("Figure"), 1.5, false},
              {Plots::tr("Axis"), 0.5, false},
              {Plots::tr("Value"), 0.8, true},
              {QStringLiteral("±"), 0.8, true},
              {Plots::tr("moved most by, from end to end of its range"), 2.2, false}},
             rows);
}

void draw_open_verdicts(SheetPage& page, const SheetContent& content) {
  std::vector<TableRow> rows;
  for (const OpenVerdict& open : open_verdicts(content.analysis, *content.options.doubts)) {
    const auto finding = std::ranges::find(content.analysis.findings, open.finding, &Finding::id);
    TableRow row;
    row.cells = {{qstring(finding->what), {7.5}, {}},
                 {axis_text(open.finding), {7.5}, {}},
                 {qstring(open.text), {7.5, true}, {}}};
    rows.push_back(row);
  }
  if (rows.empty()) return;
  draw_table(page,
             {{Plots::tr("Verdicts within the doubt"), 1.5, false},
              {Plots::tr("Axis"), 0.5, false},
              {{}, 3.8, false}},
             rows);
  page.skip(6);
}

void draw_worth(SheetPage& page, const Doubts& doubts) {
  std::vector<TableRow> rows;
  for (std::size_t i = 0; i < std::min(doubts.worth.size(), kMostWorth); ++i) {
    const Doubts::Worth& worth = doubts.worth[i];
    const Unknown& unknown = doubts.unknowns[worth.unknown];
    TableRow row;
    row.cells = {
        {worded(unknown.label), {7.5}, {}},
        {doubted_value(unknown), {7.5}, doubted_source(source_text(unknown.source), unknown)},
        {share_text(worth.share), {7.5, true}, {}},
        {qstring(worth.text), {7.5}, {}}};
    rows.push_back(row);
  }
  draw_table(page,
             {{Plots::tr("Worth measuring"), 1.4, false},
              {Plots::tr("Taken as"), 1.2, false},
              {Plots::tr("Share of the doubt"), 0.7, true},
              {Plots::tr("What measuring it tells"), 2.5, false}},
             rows);
}

}  // namespace

void draw_doubts(SheetPage& page, const SheetContent& content) {
  if (!content.options.doubts) return;
  const Doubts& doubts = *content.options.doubts;
  page.ensure(110);
  page.heading(Plots::tr("How far to trust these numbers"));
  if (doubts.figures.empty()) {
    page.paragraph(Plots::tr("Nothing to rank: %1.").arg(qstring(why_none_worth(doubts))), {7.5});
    page.paragraph(qstring(say_exact(doubts)), {7.5});
    return;
  }
  page.paragraph(plus_minus_meaning(), {7.5, false, page.theme().quiet});
  draw_uncertainties(page, content);
  page.skip(6);
  draw_open_verdicts(page, content);
  draw_worth(page, doubts);
  page.skip(4);
  page.paragraph(qstring(say_exact(doubts)), {7.5, false, page.theme().quiet});
  page.skip(6);
}

}  // namespace gazewright
