#include "app/window/drive_settings_dialog.h"

#include <QLabel>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/plots/charts.h"
#include "app/window/drive_settings_model.h"
#include "app/window/table_text.h"
#include "app/window/widgets.h"
#include "core/rig/fields.h"

namespace gazewright {

DriveSettingsDialog::DriveSettingsDialog(QWidget* parent)
    : ListDialog(new QTableView, QStringLiteral("drive_settings"), tr("Drive settings"), parent),
      model_(new DriveSettingsModel(this)) {
  list()->setModel(model_);
  layOutList();
  build();
  resize(1180, 640);
}

void DriveSettingsDialog::build() {
  auto* hint = quietLabel(tr(
      "What to set in the drive of each axis, and with what to begin. Enter goes to the field."));
  auto* top = new QHBoxLayout;
  top->addWidget(hint, 1);
  top->addWidget(copyButton());
  auto* caution = sentencesLabel(tr("First power-up"));
  caution->setObjectName(QStringLiteral("drive_settings.caution"));
  caution->setText(reason_text(first_power_caution()));
  auto* conventions = sentencesLabel(tr("Conventions"));
  conventions->setText(reason_text(settings_conventions()));
  auto* layout = new QVBoxLayout(this);
  layout->addLayout(top);
  layout->addWidget(list(), 1);
  layout->addWidget(conventions);
  layout->addWidget(heading(tr("First power-up")));
  layout->addWidget(caution);
}

void DriveSettingsDialog::fitColumns() {
  const auto wide = [this](const char* text) {
    return list()->fontMetrics().horizontalAdvance(QString::fromUtf8(text)) + 16;
  };
  const char* const widths[] = {"Travel and homing",       "Speed integral gain, as current",
                                "needs loop speed gain",   "12 345 °/s²",
                                "needs loop speed gain",   "12 345 °/s²",
                                "loop.speed_integral_gain"};
  for (int column = 0; column < DriveSettingsModel::remark; ++column)
    list()->setColumnWidth(column, wide(widths[column]));
}

void DriveSettingsDialog::setResults(const Rig& rig, const Analysis& analysis) {
  const bool first = model_->rowCount() == 0;
  model_->setPairs(paired_settings(rig, analysis));
  list()->resizeRowsToContents();
  if (first && model_->rowCount() > 0)
    list()->setCurrentIndex(model_->index(0, DriveSettingsModel::pan));
}

void DriveSettingsDialog::setTheme(const Theme& theme) { model_->setTheme(theme); }

std::string DriveSettingsDialog::pathAt(const QModelIndex& index) const {
  const auto& [pan, tilt] = model_->pair(index.row()).of;
  const bool is_tilt = index.column() == DriveSettingsModel::tilt ||
                       index.column() == DriveSettingsModel::tilt_first;
  const auto& wanted = (is_tilt && tilt) || !pan ? tilt : pan;
  return find_info(wanted->from) != nullptr ? wanted->from : std::string();
}

QString DriveSettingsDialog::text() const { return table_text(*model_); }

}  // namespace gazewright
