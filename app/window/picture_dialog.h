#pragma once

#include <QDialog>

#include "app/plots/plot_options.h"

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QLineEdit;

namespace gazewright {

/// Asks how a plot is written as a picture: kind of file, size on paper, dots per inch, ground, and
/// what the caption calls the variant.
class PictureDialog : public QDialog {
  Q_OBJECT
 public:
  struct Choice {
    QString ending = QStringLiteral("png");
    double width_mm = 160, height_mm = 100, dpi = 300;
    bool transparent = false;
    QString variant;
    bool operator==(const Choice&) const = default;
  };
  PictureDialog(const QString& plot_title, const Choice& choice, QWidget* parent);
  Choice choice() const;

 private:
  void tellSize();

  QComboBox *ending_, *ground_;
  QDoubleSpinBox *width_, *height_, *dpi_;
  QLineEdit* variant_;
  QLabel* size_;
};

/// The options without a caption.
PictureOptions picture_options(const PictureDialog::Choice& choice);

}  // namespace gazewright
