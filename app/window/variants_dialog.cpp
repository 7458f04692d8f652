#include "app/window/variants_dialog.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScrollBar>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/window/widgets.h"

namespace gazewright {
namespace {

constexpr int kWidestColumn_px = 300, kNarrowestColumn_px = 130;

}  // namespace

VariantsDialog::VariantsDialog(QWidget* parent)
    : SeenDialog(parent), model_(new VariantsModel(this)), table_(new QTableView) {
  setObjectName(QStringLiteral("variants"));
  setWindowTitle(tr("Variants"));
  build();
  connectParts();
  resize(1000, 560);
  fitButtons();
}

void VariantsDialog::build() {
  pin_ = textButton(tr("Pin this design"), tr("Keep the present design as a variant (Ctrl+D)"),
                    QStringLiteral("variant.pin"));
  restore_ =
      textButton(tr("Restore"), tr("Make the variant of the current column the present design"),
                 QStringLiteral("variant.restore"));
  pin_and_restore_ =
      textButton(tr("Pin, then restore"), tr("Keep the present design as a variant first"),
                 QStringLiteral("variant.pin_restore"));
  remove_ = textButton(tr("Remove"), tr("Remove the variant of the current column (Delete)"),
                       QStringLiteral("variant.remove"));
  copy_ = textButton(tr("Copy the table"), tr("As text with tabs (Ctrl+C)"),
                     QStringLiteral("variant.copy"));
  auto* top = new QHBoxLayout;
  for (QToolButton* each : {pin_, restore_, pin_and_restore_, remove_}) top->addWidget(each);
  top->addStretch();
  top->addWidget(copy_);
  buildTable();
  empty_ = quietLabel(
      tr("No variants yet. Pin this design, change it, and come back to compare: what differs, "
         "what it gains and what it costs. Variants are kept in the rig file."));
  empty_->setObjectName(QStringLiteral("variants.empty"));
  empty_->setWordWrap(true);
  problem_ = sentencesLabel(tr("Why it was not done"));
  problem_->setObjectName(QStringLiteral("variants.problem"));
  setKind(problem_, "problem");
  auto* hint = quietLabel(
      tr("Enter or F2 edits a name or a note, Space shows or hides a variant in the plots."));
  hint->setWordWrap(true);
  auto* layout = new QVBoxLayout(this);
  layout->addLayout(top);
  layout->addWidget(empty_, 1, Qt::AlignTop);
  layout->addWidget(table_, 1);
  layout->addWidget(problem_);
  layout->addWidget(hint);
  problem_->hide();
}

void VariantsDialog::buildTable() {
  table_->setObjectName(QStringLiteral("variants.table"));
  table_->setAccessibleName(tr("Present design and variants"));
  table_->setModel(model_);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                          QAbstractItemView::AnyKeyPressed);
  table_->setTabKeyNavigation(false);
  table_->setWordWrap(false);
  table_->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  table_->horizontalHeader()->setHighlightSections(false);
  table_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  table_->verticalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  keepRowsALine(table_);
}

void VariantsDialog::connectParts() {
  connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this,
          &VariantsDialog::fitButtons);
  connect(pin_, &QToolButton::clicked, this, &VariantsDialog::pinAsked);
  connect(restore_, &QToolButton::clicked, this, [this] { emit restoreAsked(current(), false); });
  connect(pin_and_restore_, &QToolButton::clicked, this,
          [this] { emit restoreAsked(current(), true); });
  connect(remove_, &QToolButton::clicked, this, [this] { emit removeAsked(current()); });
  connect(copy_, &QToolButton::clicked, this, &VariantsDialog::copy);
  table_->installEventFilter(this);
}

/// Keys that the table itself would leave alone, or take for one cell only.
bool VariantsDialog::eventFilter(QObject* watched, QEvent* event) {
  if (watched != table_ || event->type() != QEvent::KeyPress)
    return SeenDialog::eventFilter(watched, event);
  const auto* key = static_cast<QKeyEvent*>(event);
  const QModelIndex index = table_->currentIndex();
  if (key->matches(QKeySequence::Copy)) {
    copy();
  } else if (key->matches(QKeySequence::Delete) && current() >= 0) {
    emit removeAsked(current());
  } else if ((key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) && index.isValid() &&
             index.flags().testFlag(Qt::ItemIsEditable) && table_->indexWidget(index) == nullptr) {
    table_->edit(index);
  } else {
    return SeenDialog::eventFilter(watched, event);
  }
  return true;
}

void VariantsDialog::setContent(const std::vector<VariantHead>& heads, Comparison comparison) {
  const QModelIndex before = table_->currentIndex();
  const int row = before.row(), column = before.column();
  const int across = table_->horizontalScrollBar()->value();
  const int down = table_->verticalScrollBar()->value();
  const bool is_other = model_->setContent(heads, std::move(comparison));
  table_->clearSpans();
  for (int i = 0; i < model_->rowCount(); ++i)
    if (model_->isTitle(i)) table_->setSpan(i, 0, 1, model_->columnCount());
  if (is_other) fitColumns();
  table_->setVisible(!heads.empty());
  empty_->setVisible(heads.empty());
  if (row >= 0 && !heads.empty())
    table_->setCurrentIndex(model_->index(std::min(row, model_->rowCount() - 1),
                                          std::min(column, model_->columnCount() - 1)));
  table_->horizontalScrollBar()->setValue(across);
  table_->verticalScrollBar()->setValue(down);
  fitButtons();
}

void VariantsDialog::fitColumns() {
  table_->resizeColumnsToContents();
  for (int i = 0; i < model_->columnCount(); ++i)
    table_->setColumnWidth(
        i, std::clamp(table_->columnWidth(i) + 8, kNarrowestColumn_px, kWidestColumn_px));
}

int VariantsDialog::current() const {
  const QModelIndex index = table_->currentIndex();
  return index.isValid() ? index.column() - 1 : -1;
}

void VariantsDialog::setCurrent(int variant) {
  table_->setCurrentIndex(model_->index(VariantsModel::name, variant + 1));
}

bool VariantsDialog::isEditing() const {
  return table_->viewport()->findChild<QLineEdit*>() != nullptr;
}

void VariantsDialog::fitButtons() {
  const bool is_variant = current() >= 0;
  for (QToolButton* each : {restore_, pin_and_restore_, remove_}) each->setEnabled(is_variant);
  copy_->setEnabled(model_->rowCount() > 0);
}

void VariantsDialog::setProblem(const QString& text) {
  problem_->setText(text);
  problem_->setVisible(!text.isEmpty());
}

void VariantsDialog::copy() const { QGuiApplication::clipboard()->setText(model_->asText()); }

}  // namespace gazewright
