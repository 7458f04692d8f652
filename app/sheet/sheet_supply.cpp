#include "app/plots/charts.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "app/sheet/sheet_table.h"

/// What the supply has to give and take back: task, duty and the worst moves side by side.
namespace gazewright {
namespace {

struct SupplyLine {
  const char* label;
  const char *task, *duty, *worst;  ///< figures; null: there is none
};
constexpr SupplyLine kLines[]{
    {QT_TRANSLATE_NOOP("Plots", "Power"), "supply.peak_power", "supply.average_power", nullptr},
    {QT_TRANSLATE_NOOP("Plots", "Current"), "supply.peak_current", "supply.rms_current",
     "supply.worst_current"},
    {QT_TRANSLATE_NOOP("Plots", "Power returned"), "supply.returned_power",
     "supply.returned_average", "supply.worst_returned_power"},
    {QT_TRANSLATE_NOOP("Plots", "Bus voltage"), "supply.peak_voltage", nullptr,
     "supply.worst_voltage"},
    {QT_TRANSLATE_NOOP("Plots", "Capacitance needed, no resistor"), nullptr, nullptr,
     "supply.capacitance_needed"},
    {QT_TRANSLATE_NOOP("Plots", "Brake resistor, at most"), nullptr, nullptr,
     "supply.brake_resistor_most"},
    {QT_TRANSLATE_NOOP("Plots", "Power of the brake resistor"), nullptr,
     "supply.brake_average_power", "supply.brake_peak_power"}};

TableCell cell(const Analysis& analysis, const char* id) {
  return {id == nullptr ? QString() : figure_text(analysis.figure(id), {}), {7.5}, {}};
}

}  // namespace

void draw_supply(SheetPage& page, const SheetContent& content) {
  page.ensure(100);
  page.heading(Plots::tr("Supply"));
  const BusCurve& bus = content.analysis.bus;
  if (bus.time_s.empty()) {
    page.paragraph(reason_text(bus.because), {7.5, false, page.theme().quiet});
    return;
  }
  std::vector<TableRow> rows;
  for (const SupplyLine& line : kLines) {
    TableRow row;
    row.cells = {{Plots::tr(line.label), {7.5}, {}},
                 cell(content.analysis, line.task),
                 cell(content.analysis, line.duty),
                 cell(content.analysis, line.worst)};
    rows.push_back(row);
  }
  draw_table(page,
             {{Plots::tr("Both axes together"), 1.8, false},
              {Plots::tr("Task's moves, peak"), 1, true},
              {Plots::tr("Duty, mean or RMS"), 1, true},
              {Plots::tr("Worst moves found"), 1, true}},
             rows);
  page.skip(4);
  QStringList sentences;
  for (const std::string& sentence : bus.sentences) sentences << QString::fromStdString(sentence);
  sentences << Plots::tr(
      "A fuse is replaced by one of its own rating, never by one above its wire's; a brake "
      "resistor gets hot enough to burn and to light what touches it.");
  page.paragraph(sentences.join(' '), {7.5, false, page.theme().text});
}

}  // namespace gazewright
