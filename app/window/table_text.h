#pragma once

#include <QString>
#include <QStringList>

namespace gazewright {

/// A model as text: its headings, then its rows, cells with tabs between.
/// @tparam Model  has text(row, column), the cell's whole text
template <class Model>
QString table_text(const Model& model) {
  QString all;
  for (int row = -1; row < model.rowCount(); ++row) {
    QStringList cells;
    for (int column = 0; column < model.columnCount(); ++column)
      cells << (row < 0 ? model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString()
                        : model.text(row, column));
    all += cells.join('\t') + '\n';
  }
  return all;
}

}  // namespace gazewright
