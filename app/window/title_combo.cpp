#include "app/window/title_combo.h"

#include <QStylePainter>
#include <algorithm>

#include "app/window/widgets.h"

namespace gazewright {
namespace {
constexpr int kLeast = 6;     // characters
constexpr int kArrowEnd = 2;  // " ▾"
}  // namespace

TitleCombo::TitleCombo(QWidget* parent) : QComboBox(parent) {
  keepWheelAway(this);
  setSizeAdjustPolicy(QComboBox::AdjustToContents);
  setKind(this, "title");
}

QSize TitleCombo::minimumSizeHint() const {
  const int text = fontMetrics().averageCharWidth() * kLeast;
  return {std::min(text, sizeHint().width()), sizeHint().height()};
}

QString TitleCombo::shownText() const {
  QStyleOptionComboBox option;
  initStyleOption(&option);
  const int room =
      style()
          ->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this)
          .width();
  const QString whole = currentText(), arrow = whole.right(kArrowEnd);
  if (fontMetrics().horizontalAdvance(whole) <= room) return whole;
  return fontMetrics().elidedText(whole.chopped(arrow.size()), Qt::ElideRight,
                                  room - fontMetrics().horizontalAdvance(arrow)) +
         arrow;
}

void TitleCombo::paintEvent(QPaintEvent*) {
  QStylePainter painter(this);
  QStyleOptionComboBox option;
  initStyleOption(&option);
  option.currentText = shownText();
  painter.drawComplexControl(QStyle::CC_ComboBox, option);
  painter.drawControl(QStyle::CE_ComboBoxLabel, option);
}

}  // namespace gazewright
