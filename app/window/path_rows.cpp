#include "app/window/path_rows.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/window/document.h"
#include "app/window/edits.h"
#include "app/window/quantity_text.h"
#include "app/window/widgets.h"
#include "core/files/path_csv.h"
#include "core/rig/fields.h"

namespace gazewright {
namespace {

constexpr int kShownRows = 8;  // of a long path; the others are scrolled to
constexpr Quantity PathPoint::*kColumns[] = {&PathPoint::time_s, &PathPoint::pan_rad,
                                             &PathPoint::tilt_rad};

const FieldInfo& info_of(int column) {
  return *path_point_infos()[static_cast<std::size_t>(column)];
}

/// Why the point at this place cannot be so, or empty.
QString order_problem(const std::vector<PathPoint>& path, std::size_t at) {
  const Quantity& now = path[at].time_s;
  const auto shown = [](const Quantity& time) { return shown_quantity(time, info_of(0)); };
  if (at > 0 && *now.si <= *path[at - 1].time_s.si)
    return PathRows::tr("It would be at %1, not after the point before it, at %2.")
        .arg(shown(now), shown(path[at - 1].time_s));
  if (at + 1 < path.size() && *now.si >= *path[at + 1].time_s.si)
    return PathRows::tr("It would be at %1, not before the point after it, at %2.")
        .arg(shown(now), shown(path[at + 1].time_s));
  return {};
}

}  // namespace

PathRows::PathRows(Document& document)
    : document_(document),
      table_(new QTableWidget(0, 3)),
      problem_(sentencesLabel(tr("What is wrong with the point"))),
      add_(textButton(tr("Add a point"), tr("After the chosen one, or at the end"))),
      remove_(textButton(tr("Remove the point"), tr("The chosen one; the last two go together"))) {
  setObjectName(QStringLiteral("tracking.path"));
  setKind(problem_, "problem");
  table_->setObjectName(QStringLiteral("path.table"));
  table_->setAccessibleName(tr("Points of the target's path"));
  table_->setHorizontalHeaderLabels({tr("Time"), tr("Pan"), tr("Tilt")});
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  table_->setTabKeyNavigation(false);
  add_->setObjectName(QStringLiteral("path.add"));
  remove_->setObjectName(QStringLiteral("path.remove"));
  auto* buttons = new QHBoxLayout;
  for (QToolButton* button : {add_, remove_}) buttons->addWidget(button);
  buttons->addStretch();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(table_);
  layout->addWidget(problem_);
  layout->addLayout(buttons);
  problem_->hide();
  connect(add_, &QToolButton::clicked, this, &PathRows::addPoint);
  connect(remove_, &QToolButton::clicked, this, &PathRows::removePoint);
  connect(table_, &QTableWidget::itemChanged, this, &PathRows::take);
  refresh();
}

QString PathRows::errorText() const { return problem_->text(); }

void PathRows::refresh() {
  const std::vector<PathPoint>& path = document_.rig().tracking.path;
  if (path != shown_) {
    showProblem({});
    fill();
  }
  table_->setVisible(!path.empty());
  remove_->setEnabled(!path.empty());
  add_->setEnabled(path.size() < kMostPathPoints);
}

void PathRows::fill() {
  const QSignalBlocker quiet(table_);
  shown_ = document_.rig().tracking.path;
  const int rows = static_cast<int>(shown_.size());
  table_->setRowCount(rows);
  for (int row = 0; row < rows; ++row) {
    for (int column = 0; column < 3; ++column) {
      const Quantity& value = shown_[static_cast<std::size_t>(row)].*kColumns[column];
      if (table_->item(row, column) == nullptr) {
        table_->setItem(row, column, new QTableWidgetItem);
        table_->item(row, column)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      }
      table_->item(row, column)->setText(shown_quantity(value, info_of(column)));
    }
  }
  const int seen = std::min(rows, kShownRows) * table_->verticalHeader()->defaultSectionSize();
  table_->setFixedHeight(table_->horizontalHeader()->sizeHint().height() + seen + 4);
}

void PathRows::take(QTableWidgetItem* item) {
  std::vector<PathPoint> path = shown_;
  const auto row = static_cast<std::size_t>(item->row());
  Quantity& value = path[row].*kColumns[item->column()];
  const QString kept = shown_quantity(value, info_of(item->column()));
  const auto read = read_typed(item->text(), value, info_of(item->column()));
  QString problem;
  if (const auto* wrong = std::get_if<UnitProblem>(&read)) {
    problem = QString::fromStdString(wrong->problem + ". " + wrong->fix + ".");
  } else if (!std::get<Quantity>(read).si) {
    problem = tr("A point has all three values.");
  } else {
    value = std::get<Quantity>(read);
    problem = order_problem(path, row);
  }
  if (!problem.isEmpty()) {
    const QSignalBlocker quiet(table_);
    item->setText(kept);
    return showProblem(tr("Point %1: ").arg(row + 1) + problem + QChar(' ') +
                       tr("Still %1.").arg(kept));
  }
  showProblem({});
  Rig rig = document_.rig();
  rig.tracking.path = std::move(path);
  document_.edit(tr("path: point %1").arg(row + 1), rig);
  fill();  // as it is written, where nothing has changed
}

void PathRows::addPoint() {
  const int current = table_->currentRow();
  const std::size_t after = current < 0 ? shown_.size() : static_cast<std::size_t>(current) + 1;
  document_.edit(tr("path: add a point"), with_new_path_point(document_.rig(), after));
  table_->setCurrentCell(std::min(static_cast<int>(after), table_->rowCount() - 1), 0);
  table_->setFocus();
}

void PathRows::removePoint() {
  const int current = table_->currentRow();
  const std::size_t at = current < 0 ? shown_.size() - 1 : static_cast<std::size_t>(current);
  document_.edit(tr("path: remove a point"), with_path_point_removed(document_.rig(), at));
}

void PathRows::showProblem(const QString& problem) {
  problem_->setText(problem.isEmpty() ? QString() : QStringLiteral("✕ ") + problem);
  problem_->setVisible(!problem.isEmpty());
}

}  // namespace gazewright
