#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "app/plots/theme.h"
#include "core/analysis/analysis.h"
#include "core/analysis/open_verdicts.h"

namespace gazewright {

/// The findings of an analysis as a table, in its order.
class FindingsModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { verdict, axis, what, demand, capacity, bar, margin, remedy, kColumns };

  using QAbstractTableModel::QAbstractTableModel;
  void setFindings(const std::vector<Finding>& findings, bool remediesAreIn);
  /// What the doubt about the inputs says of verdicts; gone with the next findings.
  void setOpen(std::vector<OpenVerdict> open);
  void setTheme(const Theme& theme);
  QString openText(const Finding& finding) const;  ///< empty: its verdict is not in doubt
  const Finding& finding(int row) const { return findings_[static_cast<std::size_t>(row)]; }
  bool remediesAreIn() const { return remedies_are_in_; }
  int rowOf(const std::string& id) const;  ///< −1: no such finding
  QString summary() const;                 ///< "2 fail, 3 tight, 21 hold"

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  QString text(const Finding& finding, int column) const;
  QVariant colour(const Finding& finding, int column) const;

  std::vector<Finding> findings_;
  std::vector<OpenVerdict> open_;
  bool remedies_are_in_ = true;
  Theme theme_ = theme_for(ThemeKind::light);
};

}  // namespace gazewright
