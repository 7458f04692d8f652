#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "core/analysis/compare.h"

namespace gazewright {

/// What the table of variants shows of one of them, besides the comparison.
struct VariantHead {
  QString name, note;
  bool in_plots = false;
};

/// A comparison as a table: a column for the present design and for each variant, rows for name,
/// note and whether it is in the plots, then inputs, figures and findings under titles.
class VariantsModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Row { name, note, in_plots, kHeadRows };

  using QAbstractTableModel::QAbstractTableModel;
  /// @returns whether rows or columns are others than before
  bool setContent(const std::vector<VariantHead>& heads, Comparison comparison);
  bool isTitle(int row) const;
  /// The whole table, a tab between columns.
  QString asText() const;

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;

 signals:
  void nameEntered(int variant, const QString& name);
  void noteEntered(int variant, const QString& note);
  void inPlotsSwitched(int variant, bool on);

 private:
  struct Line {
    QString title;          ///< of a title row; else empty
    const CompareRow* row;  ///< null in a title row
  };
  const Line& line(int row) const { return lines_[static_cast<std::size_t>(row - kHeadRows)]; }
  QString cellText(int row, int column) const;
  QString headText(int row, int column) const;
  QString label(int row) const;
  const CompareCell* cellAt(int row, int column) const;
  void addLines(const QString& title, const std::vector<CompareRow>& rows);
  std::vector<std::string> ids() const;

  std::vector<VariantHead> heads_;
  Comparison comparison_;
  std::vector<Line> lines_;
};

}  // namespace gazewright
