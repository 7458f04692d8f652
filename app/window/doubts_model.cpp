#include "app/window/doubts_model.h"

#include <algorithm>

#include "app/plots/doubt_text.h"
#include "app/window/explain_text.h"

namespace gazewright {

void DoubtsModel::setDoubts(std::shared_ptr<const Doubts> doubts) {
  beginResetModel();
  doubts_ = std::move(doubts);
  stale_ = false;
  endResetModel();
}

void DoubtsModel::setStale(bool stale) {
  stale_ = stale;
  repaint();
}

void DoubtsModel::setTheme(const Theme& theme) {
  theme_ = theme;
  repaint();
}

void DoubtsModel::repaint() {
  if (rowCount() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, kColumns - 1));
}

const Doubts::Worth& DoubtsModel::worth(int row) const {
  return doubts_->worth[static_cast<std::size_t>(row)];
}
const Unknown& DoubtsModel::unknown(int row) const { return doubts_->unknowns[worth(row).unknown]; }

double DoubtsModel::largestShare() const {
  const auto& worth = doubts_->worth;
  return worth.empty() ? 0 : std::ranges::max(worth, {}, &Doubts::Worth::share).share;
}

int DoubtsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(doubts_->worth.size());
}
int DoubtsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : kColumns;
}

QString DoubtsModel::text(int row, int column) const {
  switch (column) {
    case name:
      return QString::fromStdString(unknown(row).label);
    case value:
      return doubted_value(unknown(row));
    case source:
      return doubted_source(source_word(unknown(row).source), unknown(row));
    case share:
      return share_text(worth(row).share);
    default:
      return QString::fromStdString(worth(row).text);
  }
}

QVariant DoubtsModel::data(const QModelIndex& index, int role) const {
  switch (role) {
    case Qt::DisplayRole:
      return text(index.row(), index.column());
    case Qt::ToolTipRole:
      return QStringLiteral("<p>%1</p>").arg(text(index.row(), sentence).toHtmlEscaped());
    case Qt::ForegroundRole:
      return stale_ || index.column() == source ? theme_.quiet : theme_.text;
    default:
      return {};
  }
}

QVariant DoubtsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) return QVariant(Qt::AlignLeft | Qt::AlignVCenter);
  if (role == Qt::ToolTipRole && section == share)
    return tr("Of the variance of the headline figures, the mean over those it moves or not");
  if (role != Qt::DisplayRole) return {};
  const QString words[] = {tr("Value"), tr("Taken as"), tr("Source"), tr("Share of the doubt"),
                           tr("What measuring it tells")};
  return words[section];
}

}  // namespace gazewright
