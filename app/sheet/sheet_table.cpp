#include "app/sheet/sheet_table.h"

#include <algorithm>

namespace gazewright {
namespace {

constexpr double kPad = 1.6, kGap = 7;

struct Table {
  SheetPage& page;
  const QVector<TableColumn>& columns;
  std::vector<double> left, width;

  Table(SheetPage& p, const QVector<TableColumn>& c) : page(p), columns(c) {
    double shares = 0;
    for (const TableColumn& column : columns) shares += column.share;
    const double room = page.frame().width() - kGap * double(columns.size() - 1);
    double x = page.frame().left();
    for (const TableColumn& column : columns) {
      left.push_back(x);
      width.push_back(room * column.share / shares);
      x += width.back() + kGap;
    }
  }

  TextStyle below_style() const { return {6.5, false, page.theme().quiet}; }

  double cell_height(const TableCell& cell, double cell_width) const {
    double height = 0;
    if (!cell.text.isEmpty()) height += SheetPage::textHeight(cell.text, cell_width, cell.style);
    if (!cell.below.isEmpty()) {
      height += SheetPage::textHeight(cell.below, cell_width, below_style());
    }
    return height;
  }

  double row_height(const TableRow& row) const {
    if (!row.group.isEmpty()) return 15;
    double height = 0;
    for (qsizetype i = 0; i < row.cells.size(); ++i) {
      height = std::max(height, cell_height(row.cells[i], width[std::size_t(i)]));
    }
    return height + 2 * kPad;
  }

  void header() {
    const QRectF rect = page.take(14);
    for (qsizetype i = 0; i < columns.size(); ++i) {
      page.text({left[std::size_t(i)], rect.top(), width[std::size_t(i)], 12},
                (columns[i].numbers ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter,
                columns[i].title, {6.8, false, page.theme().quiet});
    }
    page.rule(page.y(), page.theme().control, 0.7);
  }

  void draw_cells(const TableRow& row, const QRectF& rect) {
    for (qsizetype i = 0; i < row.cells.size(); ++i) {
      const TableCell& cell = row.cells[i];
      const double w = width[std::size_t(i)];
      const int side = columns[i].numbers ? Qt::AlignRight : Qt::AlignLeft;
      const int flags = side | Qt::AlignTop | Qt::TextWordWrap;
      double y = rect.top() + kPad;
      if (!cell.text.isEmpty()) {
        const double height = SheetPage::textHeight(cell.text, w, cell.style);
        page.text({left[std::size_t(i)], y, w, height}, flags, cell.text, cell.style);
        y += height;
      }
      if (!cell.below.isEmpty()) {
        page.text({left[std::size_t(i)], y, w, rect.bottom() - y}, flags, cell.below,
                  below_style());
      }
    }
  }

  void draw(const TableRow& row, double needed) {
    const double height = row_height(row);
    if (needed > page.left_over()) {
      page.newPage();
      header();
    }
    const QRectF rect = page.take(height);
    if (row.group.isEmpty()) {
      draw_cells(row, rect);
    } else {
      page.text(rect.adjusted(0, 3, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, row.group,
                {7.8, true, page.theme().text});
    }
    page.rule(rect.bottom(), page.theme().border, 0.4);
  }
};

}  // namespace

void draw_table(SheetPage& page, const QVector<TableColumn>& columns,
                const std::vector<TableRow>& rows) {
  if (rows.empty()) return;
  Table table(page, columns);
  table.header();
  for (std::size_t i = 0; i < rows.size(); ++i) {
    double needed = table.row_height(rows[i]);
    if (!rows[i].group.isEmpty() && i + 1 < rows.size()) needed += table.row_height(rows[i + 1]);
    table.draw(rows[i], needed);
  }
}

namespace {

/// Where the rows part best: at the title nearest to the middle, so that a part stays together.
std::size_t title_near_middle(const std::vector<TableCells>& rows) {
  const std::size_t middle = (rows.size() + 1) / 2;
  for (std::size_t off = 0; off < middle; ++off) {
    for (const std::size_t at : {middle + off, middle - off}) {
      if (at < rows.size() && rows[at].front().style.bold) return at;
    }
  }
  return middle;
}

}  // namespace

void draw_in_two(SheetPage& page, const std::vector<TableCells>& rows,
                 const QVector<TableColumn>& columns) {
  const std::size_t half = title_near_middle(rows);
  std::vector<TableRow> table;
  for (std::size_t i = 0; i < std::max(half, rows.size() - half); ++i) {
    TableRow row{{}, i < half ? rows[i] : TableCells(columns.size())};
    row.cells.append(i + half < rows.size() ? rows[i + half] : TableCells(columns.size()));
    table.push_back(row);
  }
  draw_table(page, columns + columns, table);
}

}  // namespace gazewright
