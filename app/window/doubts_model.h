#pragma once

#include <QAbstractTableModel>
#include <memory>

#include "app/plots/theme.h"
#include "core/analysis/doubts.h"

namespace gazewright {

/// What is worth measuring as a table, in the order of Doubts::worth.
class DoubtsModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { name, value, source, share, sentence, kColumns };

  using QAbstractTableModel::QAbstractTableModel;
  void setDoubts(std::shared_ptr<const Doubts> doubts);
  void setStale(bool stale);  ///< of the rig before; drawn quietly
  void setTheme(const Theme& theme);
  const Theme& theme() const { return theme_; }
  const Doubts::Worth& worth(int row) const;
  const Unknown& unknown(int row) const;
  double largestShare() const;
  QString text(int row, int column) const;  ///< whole, of a cell

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  void repaint();

  std::shared_ptr<const Doubts> doubts_ = std::make_shared<const Doubts>();
  bool stale_ = false;
  Theme theme_ = theme_for(ThemeKind::light);
};

}  // namespace gazewright
