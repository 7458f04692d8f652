#include <algorithm>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/margins_plot.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "app/sheet/sheet_table.h"

/// What carries the load: each demand against its capacity, and the numbers to build and tighten
/// by.
namespace gazewright {
namespace {

TableRow row_of(const Finding& finding, const Theme& theme) {
  const auto number = [&](const std::optional<double>& value) {
    return TableCell{format_value(value, finding.si_unit, finding.unit), {7.5}, {}};
  };
  const QColor axis = finding.axis ? axis_text_colour(theme, *finding.axis) : theme.text;
  TableRow row;
  row.cells = {
      {verdict_symbol(finding.verdict) + QStringLiteral(" ") + verdict_word(finding.verdict),
       {7.5, true, verdict_colour(theme, finding.verdict)},
       {}},
      {finding.axis ? axis_word(*finding.axis) : Plots::tr("Both"), {7.5, false, axis}, {}},
      {QString::fromStdString(finding.what), {7.5}, reason_text(finding.because)},
      number(finding.demand),
      number(finding.capacity),
      {margin_text(finding.margin), {7.5}, {}}};
  return row;
}

/// Figures of an axis that one builds by, in this order; of arm and stand all.
constexpr std::string_view kOfAxis[]{"bearing.radial_load",     "bearing.axial_load",
                                     "bearing.moment_load",     "bearing.output_radial",
                                     "bearing.equivalent_load", "bearing.life",
                                     "bearing.static_safety",   "bearing.play",
                                     "bearing.play_lens",       "joint.torque",
                                     "joint.slip_torque",       "joint.advised_torque",
                                     "joint.preload",           "joint.engagement",
                                     "joint.shaft_torque"};

QString value_of(const Figure* figure) {
  if (figure == nullptr || !figure->value) return QStringLiteral("–");
  return format_value(*figure->value, figure->info->si_unit, figure->info->unit);
}

TableRow figure_row(const Figure& labelled, const QString& pan, const QString& tilt,
                    const QString& both) {
  const std::string_view label = labelled.info->label;
  TableRow row;
  row.cells = {{QString::fromUtf8(label.data(), qsizetype(label.size())), {7.5}, {}},
               {pan, {7.5}, {}},
               {tilt, {7.5}, {}},
               {both, {7.5}, {}}};
  return row;
}

std::vector<TableRow> figure_rows(const Analysis& analysis) {
  std::vector<TableRow> rows;
  for (const std::string_view id : kOfAxis) {
    const Figure* pan = analysis.figure("pan." + std::string(id));
    const Figure* tilt = analysis.figure("tilt." + std::string(id));
    const Figure* there = pan != nullptr && pan->value ? pan : tilt;
    if (there == nullptr || !there->value) continue;
    rows.push_back(figure_row(*there, value_of(pan), value_of(tilt), {}));
  }
  for (const Figure& figure : analysis.figures) {
    const bool is_theirs = figure.id.starts_with("arm.") || figure.id.starts_with("stand.");
    if (is_theirs && figure.value && figure.info != nullptr)
      rows.push_back(figure_row(figure, {}, {}, value_of(&figure)));
  }
  return rows;
}

}  // namespace

void draw_loads(SheetPage& page, const SheetContent& content) {
  std::vector<TableRow> findings;
  for (const Finding& finding : content.analysis.findings) {
    if (is_about_loads(finding.id)) findings.push_back(row_of(finding, page.theme()));
  }
  const std::vector<TableRow> figures = figure_rows(content.analysis);
  if (findings.empty() && figures.empty()) return;
  page.ensure(80);
  page.heading(Plots::tr("Bearings, joints, arm and stand"));
  if (findings.empty()) {
    page.paragraph(
        Plots::tr("No ratings of bearings, screws, arm or gearbox output are entered, so "
                  "nothing is compared."),
        {7.5, false, page.theme().quiet});
  } else {
    draw_table(page,
               {{Plots::tr("Verdict"), 0.95, false},
                {Plots::tr("Axis"), 0.5, false},
                {Plots::tr("Check"), 4.6, false},
                {Plots::tr("Demand"), 1.05, true},
                {Plots::tr("Capacity"), 1.05, true},
                {Plots::tr("Margin"), 0.8, true}},
               findings);
    page.skip(6);
  }
  if (figures.empty()) return;
  draw_table(page,
             {{Plots::tr("To build by"), 4, false},
              {Plots::tr("Pan"), 1.2, true},
              {Plots::tr("Tilt"), 1.2, true},
              {Plots::tr("Both"), 1.2, true}},
             figures);
}

}  // namespace gazewright
