#include "app/window/findings_view.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QMenu>
#include <QScrollBar>
#include <QTableView>
#include <QToolButton>

#include "app/plots/charts.h"
#include "app/window/findings_delegate.h"
#include "app/window/findings_model.h"
#include "app/window/widgets.h"

namespace gazewright {

FindingsView::FindingsView(QWidget* parent) : QFrame(parent) {
  setKind(this, "card");
  model_ = new FindingsModel(this);
  delegate_ = new FindingsDelegate(this);
  makeTable();
  summary_ = quietLabel();
  summary_->setObjectName(QStringLiteral("findings.summary"));
  because_ = new ElidedLabel;
  because_->setObjectName(QStringLiteral("findings.because"));
  empty_ = quietLabel(tr("No findings: the analysis has not run yet."));
  auto* top = new QHBoxLayout;
  top->setSpacing(14);
  top->addWidget(heading(tr("Findings")));
  top->addWidget(summary_);
  top->addWidget(because_, 1);
  auto* why =
      textButton(tr("Why?"), tr("Explain the selected finding: formula, inputs, source (F2)"),
                 QStringLiteral("findings.why"));
  connect(why, &QToolButton::clicked, this, &FindingsView::whyAsked);
  top->addWidget(why);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 6, 6, 4);
  layout->setSpacing(2);
  layout->addLayout(top);
  layout->addWidget(empty_);
  layout->addWidget(table_, 1);
  fitText();

  connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this,
          [this] { currentChanged(); });
  connect(delegate_, &FindingsDelegate::remedyPressed, this, &FindingsView::applyRemedy);
  connect(table_, &QTableView::clicked, this, [this](const QModelIndex& index) {
    emit findingChosen(QString::fromStdString(model_->finding(index.row()).part));
  });
  table_->installEventFilter(this);
}

void FindingsView::makeTable() {
  table_ = new QTableView;
  table_->setObjectName(QStringLiteral("findings"));
  table_->setAccessibleName(tr("Findings"));
  table_->setModel(model_);
  table_->setItemDelegate(delegate_);
  showAsList(table_, 9);
  table_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  QHeaderView* header = table_->horizontalHeader();
  header->setStretchLastSection(true);
  header->setSectionResizeMode(QHeaderView::Fixed);
}

void FindingsView::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() == QEvent::FontChange && table_) fitText();
}

void FindingsView::fitText() {
  setMinimumHeight(5 * table_->verticalHeader()->defaultSectionSize());
  const auto wide = [this](const char* text) {
    return table_->fontMetrics().horizontalAdvance(QString::fromUtf8(text)) + 16;
  };
  table_->setColumnWidth(FindingsModel::verdict, wide("✕ unknown ±"));
  table_->setColumnWidth(FindingsModel::axis, wide("Both"));
  table_->setColumnWidth(FindingsModel::what,
                         wide("Stop torque at top speed against gearbox peak"));
  table_->setColumnWidth(FindingsModel::demand, wide("−1234 °/s"));
  table_->setColumnWidth(FindingsModel::capacity, wide("−1234 °/s"));
  table_->setColumnWidth(FindingsModel::bar, 110);
  table_->setColumnWidth(FindingsModel::margin, wide("+1000 %"));
}

void FindingsView::setFindings(const std::vector<Finding>& findings, bool remediesAreIn) {
  filling_ = true;
  QScrollBar* scroll = table_->verticalScrollBar();
  const int place = scroll->value();
  model_->setFindings(findings, remediesAreIn);
  const int row = model_->rowOf(current_id_);
  if (row >= 0 && table_->currentIndex().row() != row) {
    table_->selectRow(row);
    scroll->setValue(place);  // the selected one may be mended: it shall not take the view along
  }
  filling_ = false;
  const bool is_news = remediesAreIn && summary_->text() != model_->summary();
  summary_->setText(model_->summary());
  if (is_news) {  // once when the figures rest, not at each step of a drag
    QAccessibleEvent alert(summary_, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
  }
  empty_->setVisible(findings.empty());
  currentChanged();
}

void FindingsView::setOpen(std::vector<OpenVerdict> open) {
  model_->setOpen(std::move(open));
  filling_ = true;
  currentChanged();
  filling_ = false;
}

void FindingsView::setTheme(const Theme& theme) {
  model_->setTheme(theme);
  delegate_->setTheme(theme);
}

void FindingsView::setDimmed(bool dimmed) {
  delegate_->setDimmed(dimmed);
  table_->viewport()->update();
}
QString FindingsView::summary() const { return summary_->text(); }

void FindingsView::currentChanged() {
  const QModelIndex index = table_->currentIndex();
  if (!index.isValid()) {
    because_->clear();
    return;
  }
  const Finding& finding = model_->finding(index.row());
  const QString open = model_->openText(finding);
  because_->setText((open.isEmpty() ? QString() : open + QStringLiteral("; ")) +
                    reason_text(finding.because));
  if (filling_) return;
  const bool isNew = finding.id != current_id_;
  current_id_ = finding.id;
  if (isNew) emit findingChosen(QString::fromStdString(finding.part));
}

void FindingsView::applyRemedyOfSelected() {
  if (table_->currentIndex().isValid()) applyRemedy(table_->currentIndex().row(), -1);
}

void FindingsView::selectFirst() {
  if (table_->model()->rowCount() > 0) table_->selectRow(0);
}

void FindingsView::applyRemedy(int row, int remedy) {
  const std::vector<Remedy> remedies = model_->finding(row).remedies;
  if (remedies.empty() || !model_->remediesAreIn()) return;
  if (remedies.size() == 1 && !remedies[0].path.empty()) remedy = 0;
  if (remedy >= 0) {
    emit remedyChosen(remedies[static_cast<std::size_t>(remedy)]);
    return;
  }
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  for (const Remedy& entry : remedies) {
    QAction* action = menu->addAction(QString::fromStdString(entry.text), this,
                                      [this, entry] { emit remedyChosen(entry); });
    action->setEnabled(!entry.path.empty());
  }
  const QRect cell = table_->visualRect(model_->index(row, FindingsModel::remedy));
  menu->popup(table_->viewport()->mapToGlobal(cell.bottomLeft()));
}

bool FindingsView::eventFilter(QObject* watched, QEvent* event) {
  if (watched == table_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Space) {
      applyRemedyOfSelected();
      return true;
    }
  }
  return QFrame::eventFilter(watched, event);
}

}  // namespace gazewright
