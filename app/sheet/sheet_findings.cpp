#include <algorithm>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "app/sheet/sheet_table.h"
#include "core/analysis/missing.h"

/// What fails and is tight with its remedy, for the first page; what is not known, and what holds,
/// for later ones.
namespace gazewright {
namespace {

constexpr double kLetters = 7.5, kHeldLetters = 7;

QString remedy_text(const Finding& finding) {
  constexpr std::size_t kMost = 2;  // the nearest ones; the window shows all
  QStringList lines;
  for (std::size_t i = 0; i < std::min(kMost, finding.remedies.size()); ++i) {
    lines << QString::fromStdString(finding.remedies[i].text);
  }
  return lines.join(QStringLiteral("; "));
}

TableCell axis_cell(const Finding& finding, const Theme& theme, double size_pt) {
  const QColor colour = finding.axis ? axis_text_colour(theme, *finding.axis) : theme.text;
  return {
      finding.axis ? axis_word(*finding.axis) : Plots::tr("Both"), {size_pt, false, colour}, {}};
}

TableCell number_cell(const std::optional<double>& value, const Finding& finding, double size_pt) {
  return {value ? format_value(value, finding.si_unit, finding.unit) : QStringLiteral("–"),
          {size_pt},
          {}};
}

TableRow open_row(const Finding& finding, const Theme& theme) {
  TableRow row;
  row.cells = {
      {verdict_symbol(finding.verdict) + QStringLiteral(" ") + verdict_word(finding.verdict),
       {kLetters, true, verdict_colour(theme, finding.verdict)},
       {}},
      axis_cell(finding, theme, kLetters),
      {QString::fromStdString(finding.what), {kLetters, true}, reason_text(finding.because)},
      number_cell(finding.demand, finding, kLetters),
      number_cell(finding.capacity, finding, kLetters),
      {margin_text(finding.margin), {kLetters}, {}},
      {remedy_text(finding), {kLetters}, {}}};
  return row;
}

/// Without numbers one that holds says why, too.
TableCells held_cells(const Finding& finding, const Theme& theme) {
  return {axis_cell(finding, theme, kHeldLetters),
          {QString::fromStdString(finding.what),
           {kHeldLetters},
           finding.margin ? QString() : reason_text(finding.because)},
          number_cell(finding.demand, finding, kHeldLetters),
          number_cell(finding.capacity, finding, kHeldLetters),
          {margin_text(finding.margin), {kHeldLetters}, {}}};
}

bool is_open(const Finding& finding) {
  return finding.verdict == Verdict::fails || finding.verdict == Verdict::tight;
}

/// "Fill in first: pan motor: rotor inertia, peak current; tilt gearbox: ratio".
QString first_inputs_text(const MissingInputs& missing) {
  QStringList parts;
  std::string part;
  for (const MissingEntry& entry : missing.first) {
    const QString name = mid_sentence(QString::fromStdString(missing_entry_words(entry)));
    const QString of = QString::fromStdString(missing_part_words(entry));
    if (entry.part == part) {
      parts.back() += QStringLiteral(", ") + name;
    } else {
      parts << (name == of ? name : QStringLiteral("%1: %2").arg(of, name));
    }
    part = entry.part;
  }
  return parts.join(QStringLiteral("; "));
}

/// What is missing, and which few entries to begin with.
void draw_missing(SheetPage& page, const Analysis& analysis) {
  const MissingInputs missing = missing_inputs(analysis);
  if (missing.all.empty()) return;
  page.paragraph(Plots::tr("? Missing inputs: %1. Without them %2 figures and %3 findings are not "
                           "known. Fill in first: %4.")
                     .arg(missing.all.size())
                     .arg(missing.figures)
                     .arg(missing.findings)
                     .arg(first_inputs_text(missing)),
                 {8.5, true, page.theme().bad});
}

}  // namespace

void draw_verdicts(SheetPage& page, const SheetContent& content) {
  page.heading(Plots::tr("What fails or is tight, and what to do"));
  draw_missing(page, content.analysis);
  std::vector<TableRow> rows;
  for (const Finding& finding : content.analysis.findings)
    if (is_open(finding)) rows.push_back(open_row(finding, page.theme()));
  if (rows.empty()) {
    const bool has_held = std::ranges::any_of(
        content.analysis.findings, [](const Finding& f) { return f.verdict == Verdict::holds; });
    page.paragraph(has_held ? Plots::tr("Nothing that is known fails or is tight. What holds "
                                        "stands under “What holds”.")
                            : Plots::tr("Nothing is known yet that fails or is tight."),
                   {8.5, false, page.theme().text});
    return;
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

void draw_unknown(SheetPage& page, const SheetContent& content) {
  std::vector<TableCells> cells;
  for (const Finding& finding : content.analysis.findings) {
    if (finding.verdict != Verdict::unknown) continue;
    cells.push_back(
        {axis_cell(finding, page.theme(), kHeldLetters),
         {QString::fromStdString(finding.what), {kHeldLetters}, reason_text(finding.because)}});
  }
  if (cells.empty()) return;
  page.heading(Plots::tr("What is not known"));
  draw_in_two(page, cells, {{Plots::tr("Axis"), 0.5, false}, {Plots::tr("Check"), 5, false}});
}

void draw_held(SheetPage& page, const SheetContent& content) {
  std::vector<TableCells> cells;
  for (const Finding& finding : content.analysis.findings)
    if (finding.verdict == Verdict::holds) cells.push_back(held_cells(finding, page.theme()));
  if (cells.empty()) return;
  page.heading(Plots::tr("What holds"));
  draw_in_two(page, cells,
              {{Plots::tr("Axis"), 0.55, false},
               {Plots::tr("Check"), 3.1, false},
               {Plots::tr("Demand"), 1.1, true},
               {Plots::tr("Capacity"), 1.1, true},
               {Plots::tr("Margin"), 0.95, true}});
}

}  // namespace gazewright
