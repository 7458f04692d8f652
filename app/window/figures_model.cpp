#include "app/window/figures_model.h"

#include <algorithm>
#include <span>
#include <utility>

#include "app/plots/doubt_text.h"
#include "app/plots/text.h"
#include "app/plots/theme.h"
#include "app/window/explain_text.h"
#include "app/window/search_words.h"

namespace gazewright {
namespace {

QString searched_text(const Figure& figure) {
  return figure_name(figure) + QChar(' ') + QString::fromStdString(figure.id) + QChar(' ') +
         worded(figure.info->formula);
}

}  // namespace

void FiguresModel::setAnalysis(const std::shared_ptr<const Analysis>& analysis,
                               std::shared_ptr<const Doubts> doubts) {
  doubts_ = std::move(doubts);
  const bool same = analysis_ && analysis && analysis_->figures.size() == analysis->figures.size();
  const std::shared_ptr<const Analysis> before = std::exchange(analysis_, analysis);
  if (!same) return fill();
  std::vector<const Figure*> rows;
  rows.reserve(rows_.size());
  for (const Figure* old : rows_)
    rows.push_back(&analysis_->figures[static_cast<std::size_t>(old - before->figures.data())]);
  rows_ = std::move(rows);
  if (!rows_.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, kColumns - 1));
}

void FiguresModel::setSearch(const QString& words) {
  words_ = words_of_search(words);
  fill();
}

void FiguresModel::setOnly(std::set<std::string> ids) {
  only_ = std::move(ids);
  fill();
}

void FiguresModel::fill() {
  beginResetModel();
  rows_.clear();
  const std::span<const Figure> figures =
      analysis_ ? std::span<const Figure>(analysis_->figures) : std::span<const Figure>();
  for (const Figure& figure : figures) {
    if (!figure.info || (!only_.empty() && !only_.contains(figure.id))) continue;
    const QString text = words_.isEmpty() ? QString() : searched_text(figure);
    if (has_words(text, words_)) rows_.push_back(&figure);
  }
  endResetModel();
}

const Figure* FiguresModel::figure(int row) const {
  return row >= 0 && row < rowCount() ? rows_[static_cast<std::size_t>(row)] : nullptr;
}

int FiguresModel::rowOf(const std::string& id) const {
  const auto at = std::ranges::find(rows_, id, [](const Figure* figure) { return figure->id; });
  return at == rows_.end() ? -1 : static_cast<int>(at - rows_.begin());
}

int FiguresModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}
int FiguresModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : kColumns;
}

QVariant FiguresModel::data(const QModelIndex& index, int role) const {
  const Figure* at = figure(index.row());
  if (!at) return {};
  if (role == Qt::TextAlignmentRole && index.column() == value)
    return QVariant(Qt::AlignRight | Qt::AlignVCenter);
  if (role == Qt::ToolTipRole) return QString::fromStdString(at->id);
  if (role != Qt::DisplayRole) return {};
  if (index.column() == value) return figure_value(*at);
  if (index.column() == doubt)
    return doubts_ ? plus_minus(*doubts_, *analysis_, at->id) : QString();
  const auto whose = axis_of_id(at->id);
  if (index.column() == axis) return whose ? axis_word(*whose) : QString();
  return worded(at->info->label);
}

QVariant FiguresModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation == Qt::Horizontal && role == Qt::ToolTipRole && section == doubt)
    return QStringLiteral("<p>%1</p>").arg(plus_minus_meaning().toHtmlEscaped());
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  const QString words[] = {tr("Figure"), tr("Axis"), tr("Value"), QStringLiteral("±")};
  return words[section];
}

}  // namespace gazewright
