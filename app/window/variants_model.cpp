#include "app/window/variants_model.h"

#include <QFont>
#include <QStringList>
#include <utility>

#include "app/plots/compare_text.h"
#include "app/plots/text.h"

namespace gazewright {
namespace {

QString shown_text(const CompareRow& row, const CompareCell& cell) {
  QString text = compared_text(row, cell);
  if (!row.is_words() && !cell.word.empty() && (cell.value || row.si_unit == "1"))
    text += QStringLiteral("  ") + worded(cell.word);
  if (cell.differs) text += QStringLiteral("  (%1)").arg(difference_text(row, cell));
  if (cell.is_best) text += QStringLiteral("  ") + VariantsModel::tr("✓ best");
  return text;
}

}  // namespace

void VariantsModel::addLines(const QString& title, const std::vector<CompareRow>& rows) {
  if (rows.empty()) return;
  lines_.push_back({title, nullptr});
  for (const CompareRow& row : rows) lines_.push_back({{}, &row});
}

std::vector<std::string> VariantsModel::ids() const {
  std::vector<std::string> ids;
  ids.reserve(lines_.size());
  for (const Line& each : lines_) ids.push_back(each.row ? each.row->id : std::string());
  return ids;
}

bool VariantsModel::setContent(const std::vector<VariantHead>& heads, Comparison comparison) {
  const std::vector<std::string> before = ids();
  const std::size_t columns = heads_.size();
  beginResetModel();
  heads_ = heads;
  comparison_ = std::move(comparison);
  lines_.clear();
  addLines(tr("Inputs that differ"), comparison_.inputs);
  addLines(tr("Main figures"), comparison_.figures);
  addLines(tr("Findings"), comparison_.findings);
  endResetModel();
  return columns != heads_.size() || before != ids();
}

int VariantsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() || heads_.empty() ? 0 : kHeadRows + static_cast<int>(lines_.size());
}

int VariantsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() || heads_.empty() ? 0 : 1 + static_cast<int>(heads_.size());
}

bool VariantsModel::isTitle(int row) const { return row >= kHeadRows && line(row).row == nullptr; }

const CompareCell* VariantsModel::cellAt(int row, int column) const {
  if (row < kHeadRows || isTitle(row)) return nullptr;
  return &line(row).row->cells[static_cast<std::size_t>(column)];
}

QString VariantsModel::headText(int row, int column) const {
  if (column == 0) return row == name ? tr("Present design") : QString();
  const VariantHead& head = heads_[static_cast<std::size_t>(column - 1)];
  if (row == name) return head.name;
  if (row == note) return head.note;
  return head.in_plots ? tr("shown") : tr("hidden");
}

QString VariantsModel::cellText(int row, int column) const {
  if (row < kHeadRows) return headText(row, column);
  if (isTitle(row)) return column == 0 ? line(row).title : QString();
  return shown_text(*line(row).row, *cellAt(row, column));
}

QString VariantsModel::label(int row) const {
  if (row == name) return tr("Name");
  if (row == note) return tr("Note");
  if (row == in_plots) return tr("In the plots");
  return line(row).row ? QString::fromStdString(line(row).row->label) : QString();
}

QVariant VariantsModel::data(const QModelIndex& index, int role) const {
  const int row = index.row(), column = index.column();
  const CompareCell* cell = cellAt(row, column);
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return cellText(row, column);
    case Qt::AccessibleTextRole:
      return QStringLiteral("%1, %2: %3")
          .arg(label(row), headText(name, column), cellText(row, column));
    case Qt::ToolTipRole:
      if (cell && !cell->value && !cell->word.empty()) return QString::fromStdString(cell->word);
      return row == note ? cellText(row, column) : QVariant();
    case Qt::CheckStateRole:
      if (row != in_plots || column == 0) return {};
      return heads_[static_cast<std::size_t>(column - 1)].in_plots ? Qt::Checked : Qt::Unchecked;
    case Qt::FontRole:
      if ((cell && cell->is_best) || isTitle(row) || row == name) {
        QFont font;
        font.setBold(true);
        return font;
      }
      return {};
    default:
      return {};
  }
}

QVariant VariantsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (role != Qt::DisplayRole) return {};
  return orientation == Qt::Vertical ? label(section) : headText(name, section);
}

Qt::ItemFlags VariantsModel::flags(const QModelIndex& index) const {
  if (isTitle(index.row())) return Qt::ItemIsEnabled;
  Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
  if (index.column() == 0) return flags;
  if (index.row() == name || index.row() == note) flags |= Qt::ItemIsEditable;
  if (index.row() == in_plots) flags |= Qt::ItemIsUserCheckable;
  return flags;
}

bool VariantsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  const int variant = index.column() - 1;
  if (variant < 0 || index.row() >= kHeadRows) return false;
  if (index.row() == in_plots) {
    if (role == Qt::CheckStateRole) emit inPlotsSwitched(variant, value.toInt() == Qt::Checked);
    return role == Qt::CheckStateRole;
  }
  if (role != Qt::EditRole) return false;
  const QString text = value.toString().trimmed();
  if (index.row() == name)
    emit nameEntered(variant, text);
  else
    emit noteEntered(variant, text);
  return true;
}

QString VariantsModel::asText() const {
  QStringList lines;
  for (int row = 0; row < rowCount(); ++row) {
    QStringList cells{label(row)};
    for (int column = 0; column < columnCount(); ++column) {
      QString text = cellText(row, column);
      cells << text.replace('\t', ' ').replace('\n', ' ');
    }
    lines << (isTitle(row) ? cells[1] : cells.join('\t'));
  }
  return lines.join('\n') + '\n';
}

}  // namespace gazewright
