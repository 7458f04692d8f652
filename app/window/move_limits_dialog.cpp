#include "app/window/move_limits_dialog.h"

#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <functional>

#include "app/plots/charts.h"
#include "app/window/drive_line_text.h"
#include "app/window/widgets.h"

namespace gazewright {

MoveLimitsDialog::MoveLimitsDialog(QWidget* parent)
    : ListDialog(new QTableWidget, QStringLiteral("limits"), tr("What limits the moves"), parent),
      theme_(theme_for(ThemeKind::light)),
      table_(static_cast<QTableWidget*>(list())) {
  table_->setColumnCount(3);
  table_->setHorizontalHeaderLabels({tr("Axis"), tr("What would help"), tr("Why")});
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  layOutList();
  build();
  resize(980, 440);
  setStale();
}

void MoveLimitsDialog::build() {
  auto* hint = quietLabel(
      tr("What one change would save, simulated, the most first. Enter goes to its field."));
  state_ = sentencesLabel(tr("State of the list"));
  state_->setObjectName(QStringLiteral("limits.state"));
  empty_ = quietLabel(tr("No single change of a field that limits a move saves 1 % of its time."));
  empty_->setObjectName(QStringLiteral("limits.empty"));
  empty_->setWordWrap(true);
  auto* layout = new QVBoxLayout(this);
  for (const Axis axis : kAxes) {
    const auto at = static_cast<std::size_t>(axis);
    names_[at] = heading(axis_word(axis));
    sentences_[at] = sentencesLabel(tr("What limits %1").arg(axis_word(axis)));
    layout->addWidget(names_[at]);
    layout->addWidget(sentences_[at]);
  }
  auto* top = new QHBoxLayout;
  top->addWidget(hint, 1);
  top->addWidget(copyButton());
  layout->addLayout(top);
  layout->addWidget(state_);
  layout->addWidget(empty_, 1, Qt::AlignTop);
  layout->addWidget(table_, 1);
}

void MoveLimitsDialog::fitColumns() {
  const int letter = table_->fontMetrics().averageCharWidth();
  table_->setColumnWidth(0, 9 * letter);
  table_->setColumnWidth(1, 62 * letter);
  table_->resizeRowsToContents();
}

void MoveLimitsDialog::setAnalysis(const Analysis& analysis) {
  const int before = table_->currentRow();
  rows_.clear();
  for (const Axis axis : kAxes) {
    const MoveLimits& limits = analysis.limits_of(axis);
    sentences_[static_cast<std::size_t>(axis)]->setText(limit_sentences(limits).join('\n'));
    for (const LimitGain& gain : limits.gains) rows_.push_back({axis, gain});
  }
  std::ranges::stable_sort(rows_, std::greater{}, [](const Row& row) { return row.gain.saved_s; });
  state_->hide();
  empty_->setVisible(rows_.empty());
  table_->setVisible(!rows_.empty());
  table_->setEnabled(true);
  copyButton()->setEnabled(true);
  fillTable();
  if (!rows_.empty()) table_->selectRow(std::clamp(before, 0, table_->rowCount() - 1));
}

void MoveLimitsDialog::fillTable() {
  table_->setRowCount(static_cast<int>(rows_.size()));
  for (int i = 0; i < table_->rowCount(); ++i) {
    const Row& row = rows_[static_cast<std::size_t>(i)];
    const QString texts[] = {axis_word(row.axis), QString::fromStdString(row.gain.change),
                             QString::fromStdString(row.gain.reason)};
    for (int column = 0; column < table_->columnCount(); ++column) {
      auto* cell = new QTableWidgetItem(texts[column]);
      if (column == 0) cell->setForeground(axis_text_colour(theme_, row.axis));
      if (column == 2) cell->setForeground(theme_.quiet);
      table_->setItem(i, column, cell);
    }
  }
  table_->resizeRowsToContents();
}

void MoveLimitsDialog::setStale() {
  table_->setEnabled(false);
  copyButton()->setEnabled(false);
  empty_->hide();
  const bool any = !rows_.empty();
  table_->setVisible(any);
  state_->setText(any ? tr("Of the rig before the last change; being worked out again.")
                      : tr("Being worked out."));
  state_->show();
}

void MoveLimitsDialog::setTheme(const Theme& theme) {
  theme_ = theme;
  for (const Axis axis : kAxes) {
    QPalette palette = names_[static_cast<std::size_t>(axis)]->palette();
    palette.setColor(QPalette::WindowText, axis_text_colour(theme, axis));
    names_[static_cast<std::size_t>(axis)]->setPalette(palette);
  }
  fillTable();
}

std::string MoveLimitsDialog::pathAt(const QModelIndex& index) const {
  return rows_.at(static_cast<std::size_t>(index.row())).gain.path;
}

QString MoveLimitsDialog::text() const {
  QString all;
  for (const Axis axis : kAxes)
    all += axis_word(axis) + '\n' + sentences_[static_cast<std::size_t>(axis)]->text() + '\n';
  for (const Row& row : rows_) {
    all += axis_word(row.axis) + '\t' + QString::fromStdString(row.gain.change) + '\t' +
           QString::fromStdString(row.gain.reason) + '\n';
  }
  return all;
}

}  // namespace gazewright
