#include "app/window/drive_settings_dialog.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QShortcut>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/plots/charts.h"
#include "app/window/drive_settings_model.h"
#include "app/window/widgets.h"
#include "core/rig/fields.h"

namespace gazewright {

DriveSettingsDialog::DriveSettingsDialog(QWidget* parent)
    : SeenDialog(parent), model_(new DriveSettingsModel(this)), table_(new QTableView) {
  setObjectName(QStringLiteral("drive_settings"));
  setWindowTitle(tr("Drive settings"));
  build();
  connect(table_, &QTableView::clicked, this,
          [this](const QModelIndex& index) { choose(index, false); });
  connect(table_, &QTableView::doubleClicked, this,
          [this](const QModelIndex& index) { choose(index, true); });
  connect(copy_, &QToolButton::clicked, this, &DriveSettingsDialog::copy);
  auto* help = new QShortcut(QKeySequence::HelpContents, this);
  connect(help, &QShortcut::activated, this, &DriveSettingsDialog::helpWanted);
  table_->installEventFilter(this);
  resize(1180, 640);
}

void DriveSettingsDialog::build() {
  auto* hint = quietLabel(tr(
      "What to set in the drive of each axis, and with what to begin. Enter goes to the field."));
  copy_ = textButton(tr("Copy the table"), tr("As text with tabs (Ctrl+C)"),
                     QStringLiteral("drive_settings.copy"));
  auto* top = new QHBoxLayout;
  top->addWidget(hint, 1);
  top->addWidget(copy_);
  buildTable();
  auto* caution = sentencesLabel(tr("First power-up"));
  caution->setObjectName(QStringLiteral("drive_settings.caution"));
  caution->setText(reason_text(first_power_caution()));
  auto* conventions = sentencesLabel(tr("Conventions"));
  conventions->setText(reason_text(settings_conventions()));
  auto* layout = new QVBoxLayout(this);
  layout->addLayout(top);
  layout->addWidget(table_, 1);
  layout->addWidget(conventions);
  layout->addWidget(heading(tr("First power-up")));
  layout->addWidget(caution);
}

void DriveSettingsDialog::buildTable() {
  table_->setObjectName(QStringLiteral("drive_settings.table"));
  table_->setAccessibleName(tr("Drive settings"));
  table_->setModel(model_);
  showAsList(table_);
  table_->setWordWrap(true);
  QHeaderView* header = table_->horizontalHeader();
  header->setSectionResizeMode(QHeaderView::Interactive);
  header->setStretchLastSection(true);
  // Queued: the last column gets what is left once all others have their width.
  connect(header, &QHeaderView::sectionResized, table_, &QTableView::resizeRowsToContents,
          Qt::QueuedConnection);
  const auto wide = [this](const char* text) {
    return table_->fontMetrics().horizontalAdvance(QString::fromUtf8(text)) + 16;
  };
  const char* const widths[] = {"Travel and homing",       "Speed integral gain, as current",
                                "needs loop speed gain",   "12 345 °/s²",
                                "needs loop speed gain",   "12 345 °/s²",
                                "loop.speed_integral_gain"};
  for (int column = 0; column < DriveSettingsModel::remark; ++column)
    table_->setColumnWidth(column, wide(widths[column]));
}

void DriveSettingsDialog::setResults(const Rig& rig, const Analysis& analysis) {
  const bool first = model_->rowCount() == 0;
  model_->setPairs(paired_settings(rig, analysis));
  table_->resizeRowsToContents();
  if (first && model_->rowCount() > 0)
    table_->setCurrentIndex(model_->index(0, DriveSettingsModel::pan));
}

void DriveSettingsDialog::setTheme(const Theme& theme) { model_->setTheme(theme); }

void DriveSettingsDialog::choose(const QModelIndex& index, bool goes) {
  if (!index.isValid()) return;
  const auto& [pan, tilt] = model_->pair(index.row()).of;
  const bool is_tilt = index.column() == DriveSettingsModel::tilt ||
                       index.column() == DriveSettingsModel::tilt_first;
  const auto& wanted = (is_tilt && tilt) || !pan ? tilt : pan;
  if (find_info(wanted->from) != nullptr)
    emit fieldChosen(QString::fromStdString(wanted->from), goes);
}

bool DriveSettingsDialog::eventFilter(QObject* watched, QEvent* event) {
  if (watched != table_ || event->type() != QEvent::KeyPress)
    return SeenDialog::eventFilter(watched, event);
  const auto* key = static_cast<QKeyEvent*>(event);
  if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
    choose(table_->currentIndex(), true);
  } else if (key->matches(QKeySequence::Copy)) {
    copy();
  } else {
    return SeenDialog::eventFilter(watched, event);
  }
  return true;
}

void DriveSettingsDialog::copy() const { QGuiApplication::clipboard()->setText(model_->asText()); }

}  // namespace gazewright
