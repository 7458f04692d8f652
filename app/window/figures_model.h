#pragma once

#include <QAbstractTableModel>
#include <memory>
#include <set>
#include <vector>

#include "core/analysis/doubts.h"

namespace gazewright {

/// All figures of an analysis that pass a search, as a table.
class FiguresModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { name, axis, value, doubt, kColumns };

  using QAbstractTableModel::QAbstractTableModel;
  /// @param doubts  of the same analysis; null: not there
  void setAnalysis(const std::shared_ptr<const Analysis>& analysis,
                   std::shared_ptr<const Doubts> doubts = {});
  /// Words that label, formula or id must all have; any order, any case.
  void setSearch(const QString& words);
  /// Only these ids; empty: all.
  void setOnly(std::set<std::string> ids);

  const Figure* figure(int row) const;     ///< null where there is no such row
  int rowOf(const std::string& id) const;  ///< −1: not in the list
  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  void fill();

  std::shared_ptr<const Analysis> analysis_;
  std::shared_ptr<const Doubts> doubts_;
  QStringList words_;
  std::set<std::string> only_;
  std::vector<const Figure*> rows_;
};

}  // namespace gazewright
