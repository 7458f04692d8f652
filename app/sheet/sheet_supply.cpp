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

/// Values side by side, and under the label why one of them is not known. Empty where there is
/// nothing to say: no value, and nobody asked for one.
std::optional<TableRow> row_of(const Analysis& analysis, const SupplyLine& line) {
  TableRow row;
  row.cells = {{Plots::tr(line.label), {7.5}, {}}};
  bool says = false;
  for (const char* id : {line.task, line.duty, line.worst}) {
    const Figure* figure = id == nullptr ? nullptr : analysis.figure(id);
    row.cells.append({figure == nullptr ? QString() : figure_text(figure), {7.5}, {}});
    if (figure == nullptr || (!figure->value && figure->is_aside)) continue;
    says = true;
    if (!figure->value && row.cells[0].below.isEmpty())
      row.cells[0].below = reason_text(figure->because);
  }
  return says ? std::optional(row) : std::nullopt;
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
  for (const SupplyLine& line : kLines)
    if (auto row = row_of(content.analysis, line)) rows.push_back(std::move(*row));
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
