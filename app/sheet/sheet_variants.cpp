#include <algorithm>

#include "app/plots/compare_text.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "app/sheet/sheet_table.h"

/// The present design beside the rig's variants, a few at a time as the page is wide.
namespace gazewright {
namespace {

constexpr std::size_t kVariantsBeside = 3;

TableCell cell_of(const CompareRow& row, const CompareCell& cell) {
  QStringList below;
  if (!row.is_words() && cell.value && !cell.word.empty()) below << worded(cell.word);
  if (cell.differs) below << difference_text(row, cell);
  if (cell.is_best) below << Plots::tr("best");
  return {compared_text(row, cell), {7, cell.is_best}, below.join(QStringLiteral(", "))};
}

/// Figures that are the same in all designs stand in the table of figures.
std::vector<CompareRow> that_differ(std::vector<CompareRow> rows) {
  std::erase_if(rows, [](const CompareRow& row) {
    return std::ranges::none_of(row.cells, &CompareCell::differs);
  });
  return rows;
}

void add_rows(std::vector<TableRow>& table, const QString& title,
              const std::vector<CompareRow>& rows, std::size_t first, std::size_t count) {
  if (rows.empty()) return;
  table.push_back({title, {}});
  for (const CompareRow& row : rows) {
    TableRow line;
    line.cells = {{QString::fromStdString(row.label), {7}, {}}, cell_of(row, row.cells.front())};
    for (std::size_t i = first; i < first + count; ++i)
      line.cells.append(cell_of(row, row.cells[i]));
    table.push_back(line);
  }
}

}  // namespace

void draw_variants(SheetPage& page, const SheetContent& content) {
  if (!content.options.comparison || content.rig.variants.empty()) return;
  const Comparison& comparison = *content.options.comparison;
  page.ensure(120);
  page.heading(Plots::tr("Variants"));
  for (const Variant& variant : content.rig.variants)
    if (!variant.note.empty())
      page.paragraph(QString::fromStdString(variant.name + ": " + variant.note), {7.5});
  for (std::size_t first = 1; first < comparison.names.size(); first += kVariantsBeside) {
    const std::size_t count = std::min(kVariantsBeside, comparison.names.size() - first);
    QVector<TableColumn> columns{{{}, 1.5, false}, {Plots::tr("present design"), 1, true}};
    for (std::size_t i = first; i < first + count; ++i)
      columns.append({QString::fromStdString(comparison.names[i]), 1, true});
    std::vector<TableRow> table;
    add_rows(table, Plots::tr("Inputs that differ"), comparison.inputs, first, count);
    add_rows(table, Plots::tr("Main figures that differ"), that_differ(comparison.figures), first,
             count);
    add_rows(table, Plots::tr("Findings"), comparison.findings, first, count);
    draw_table(page, columns, table);
    page.skip(6);
  }
}

}  // namespace gazewright
