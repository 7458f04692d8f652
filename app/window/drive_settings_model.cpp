#include "app/window/drive_settings_model.h"

#include <QStringList>

#include "app/plots/charts.h"
#include "app/plots/setting_text.h"
#include "app/plots/text.h"

namespace gazewright {
namespace {

/// Of both axes, each named where they differ.
QString remarks(const SettingPair& pair) {
  const QString pan = setting_remark(pair.of[0]), tilt = setting_remark(pair.of[1]);
  if (pan == tilt) return pan;
  QStringList all;
  for (const Axis axis : kAxes)
    if (const QString& one = axis == Axis::pan ? pan : tilt; !one.isEmpty())
      all << QStringLiteral("%1: %2").arg(axis_word(axis), one);
  return all.join(QStringLiteral("; "));
}

}  // namespace

void DriveSettingsModel::setPairs(std::vector<SettingPair> pairs) {
  const bool same = pairs.size() == pairs_.size();
  if (!same) beginResetModel();
  pairs_ = std::move(pairs);
  if (!same) endResetModel();
  if (same && rowCount() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, kColumns - 1));
}

void DriveSettingsModel::setTheme(const Theme& theme) {
  theme_ = theme;
  if (rowCount() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, kColumns - 1));
}

int DriveSettingsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(pairs_.size());
}
int DriveSettingsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : kColumns;
}

QString DriveSettingsModel::text(int row, int column) const {
  const SettingPair& line = pair(row);
  switch (column) {
    case group:
      return worded(line.any().group);
    case name:
      return worded(line.any().label);
    case pan:
    case tilt:
      return setting_text(line.of[column == pan ? 0 : 1]);
    case pan_first:
    case tilt_first:
      return first_text(line.of[column == pan_first ? 0 : 1]);
    case from:
      return setting_from(line);
    default:
      return remarks(line);
  }
}

bool DriveSettingsModel::isMissing(int row, int column) const {
  if (column != pan && column != tilt) return false;
  const auto& setting = pair(row).of[column == pan ? 0 : 1];
  return setting && !setting->value && begins_as("needs %1", setting->text);
}

QVariant DriveSettingsModel::data(const QModelIndex& index, int role) const {
  const int row = index.row(), column = index.column();
  switch (role) {
    case Qt::DisplayRole:
      return column == group && row > 0 && pair(row).any().group == pair(row - 1).any().group
                 ? QString()
                 : text(row, column);
    case Qt::ToolTipRole: {
      QStringList lines;
      for (const QString& line : {text(row, column), text(row, remark)})
        if (!line.isEmpty() && !lines.contains(line)) lines << line.toHtmlEscaped();
      return QStringLiteral("<p>%1</p>").arg(lines.join(QStringLiteral("<br>")));
    }
    case Qt::ForegroundRole:
      if (isMissing(row, column)) return theme_.bad;
      return column == group || column == from || column == remark ? theme_.quiet : theme_.text;
    default:
      return {};
  }
}

QVariant DriveSettingsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) return QVariant(Qt::AlignLeft | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  const QString words[] = {tr("Group"), tr("Setting"),     tr("Pan"),        tr("Pan, first"),
                           tr("Tilt"),  tr("Tilt, first"), tr("Comes from"), tr("Remark")};
  return words[section];
}

}  // namespace gazewright
