#pragma once

#include <QAbstractTableModel>

#include "app/plots/theme.h"
#include "core/analysis/drive_settings.h"

namespace gazewright {

/// What to set in the drives as a table, pan beside tilt, in the order of the groups.
class DriveSettingsModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { group, name, pan, pan_first, tilt, tilt_first, from, remark, kColumns };

  using QAbstractTableModel::QAbstractTableModel;
  void setPairs(std::vector<SettingPair> pairs);
  void setTheme(const Theme& theme);
  const SettingPair& pair(int row) const { return pairs_[static_cast<std::size_t>(row)]; }
  QString text(int row, int column) const;  ///< whole, of a cell

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  bool isMissing(int row, int column) const;

  std::vector<SettingPair> pairs_;
  Theme theme_ = theme_for(ThemeKind::light);
};

}  // namespace gazewright
