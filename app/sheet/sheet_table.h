#pragma once

#include <QVector>
#include <vector>

#include "app/sheet/sheet_page.h"

namespace gazewright {

struct TableColumn {
  QString title;
  double share = 1;      ///< of the width, relative to the others
  bool numbers = false;  ///< set to the right
};

struct TableCell {
  QString text;
  TextStyle style{7.5};
  QString below;  ///< a second, quieter text under the first
};

/// A group's title across all columns where `group` is not empty, else cells.
struct TableRow {
  QString group;
  QVector<TableCell> cells;
};

/// Draws rows with hairlines between them; text wraps; the header comes again on a new page, and a
/// group's title stays with its first row.
void draw_table(SheetPage& page, const QVector<TableColumn>& columns,
                const std::vector<TableRow>& rows);

using TableCells = QVector<TableCell>;
/// Rows without groups, the second half beside the first; they part at the row with a bold first
/// cell that is nearest to the middle.
void draw_in_two(SheetPage& page, const std::vector<TableCells>& rows,
                 const QVector<TableColumn>& columns);

}  // namespace gazewright
