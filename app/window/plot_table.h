#pragma once

#include <QAbstractTableModel>
#include <QDialog>

#include "app/plots/plot_view.h"

namespace gazewright {

/// Rows of cells with a header; numbers in the locale.
class CellsModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  CellsModel(const QStringList& header, const QVector<QStringList>& rows, QObject* parent);
  int rowCount(const QModelIndex& parent) const override;
  int columnCount(const QModelIndex& parent) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation along, int role) const override;

 private:
  QStringList header_;
  QVector<QStringList> rows_;
};

/// What a plot shows, as words and tables: one for each of its charts. It keeps what the plot
/// showed when it was opened.
class PlotTable : public QDialog {
  Q_OBJECT
 public:
  PlotTable(const PlotView& plot, QWidget* parent);
};

/// A table to the clipboard: as text with tabs, and as CSV for those that know it.
void copy_csv(const QString& csv);

}  // namespace gazewright
