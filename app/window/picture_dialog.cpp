#include "app/window/picture_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <cmath>

#include "app/window/widgets.h"

namespace gazewright {
namespace {

QDoubleSpinBox* spin_box(double value, double least, double most, const QString& unit) {
  auto* box = calmed(new QDoubleSpinBox);
  box->setRange(least, most);
  box->setDecimals(0);
  box->setSuffix(unit);
  box->setValue(value);
  return box;
}

}  // namespace

PictureDialog::PictureDialog(const QString& plot_title, const Choice& choice, QWidget* parent)
    : QDialog(parent) {
  setWindowTitle(tr("Picture of “%1”").arg(plot_title));
  ending_ = calmed(new QComboBox);
  ending_->addItem(tr("PNG (pixels)"), QStringLiteral("png"));
  ending_->addItem(tr("SVG (vectors)"), QStringLiteral("svg"));
  ending_->addItem(tr("PDF (vectors)"), QStringLiteral("pdf"));
  ending_->setCurrentIndex(std::max(0, ending_->findData(choice.ending)));
  width_ = spin_box(choice.width_mm, 60, 1000, tr(" mm"));
  height_ = spin_box(choice.height_mm, 40, 1000, tr(" mm"));
  dpi_ = spin_box(choice.dpi, 72, 1200, tr(" dpi"));
  ground_ = calmed(new QComboBox);
  ground_->addItems({tr("White"), tr("Transparent")});
  ground_->setCurrentIndex(choice.transparent ? 1 : 0);
  variant_ = new QLineEdit(choice.variant);
  variant_->setPlaceholderText(tr("for the caption, may be empty"));
  variant_->setMinimumWidth(34 * fontMetrics().averageCharWidth());
  size_ = quietLabel();
  size_->setWordWrap(true);
  auto* form = new QFormLayout(this);
  form->addRow(tr("&Kind of file"), ending_);
  form->addRow(tr("&Width"), width_);
  form->addRow(tr("&Height"), height_);
  form->addRow(tr("&Resolution"), dpi_);
  form->addRow(tr("&Ground"), ground_);
  form->addRow(tr("&Variant or revision"), variant_);
  form->addRow(size_);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Save | QDialogButtonBox::Cancel);
  buttons->button(QDialogButtonBox::Save)->setText(tr("&Save…"));
  form->addRow(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(ending_, &QComboBox::currentIndexChanged, this, &PictureDialog::tellSize);
  for (QDoubleSpinBox* box : {width_, height_, dpi_})
    connect(box, &QDoubleSpinBox::valueChanged, this, &PictureDialog::tellSize);
  tellSize();
}

PictureDialog::Choice PictureDialog::choice() const {
  return {.ending = ending_->currentData().toString(),
          .width_mm = width_->value(),
          .height_mm = height_->value(),
          .dpi = dpi_->value(),
          .transparent = ground_->currentIndex() == 1,
          .variant = variant_->text().trimmed()};
}

void PictureDialog::tellSize() {
  const bool pixels = choice().ending == QStringLiteral("png");
  dpi_->setEnabled(pixels);
  const auto count = [&](double mm) { return std::lround(mm / 25.4 * dpi_->value()); };
  const QString light = tr("The colours are those for light paper.");
  size_->setText(pixels ? tr("%1 × %2 pixels. %3")
                              .arg(count(width_->value()))
                              .arg(count(height_->value()))
                              .arg(light)
                        : light);
}

PictureOptions picture_options(const PictureDialog::Choice& choice) {
  return {.width_mm = choice.width_mm,
          .height_mm = choice.height_mm,
          .dpi = choice.dpi,
          .transparent = choice.transparent};
}

}  // namespace gazewright
