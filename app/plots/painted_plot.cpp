#include "app/plots/painted_plot.h"

#include <QPainter>

namespace gazewright {

void PaintedPlot::setInput(const PlotInput& input) {
  take(input);
  setAccessibleDescription(summary());
  update();
}

void PaintedPlot::setTheme(const Theme& theme) {
  theme_ = theme;
  update();
}

QString PaintedPlot::summary() const { return message().isEmpty() ? words() : message(); }

void PaintedPlot::paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const {
  painter.save();
  painter.setLayoutDirection(Qt::LeftToRight);  // a number stands before its unit
  painter.fillRect(rect, theme.card);
  if (message().isEmpty()) {
    paintPicture(painter, inside(rect), theme);
  } else {
    painter.setPen(theme.quiet);
    painter.drawText(rect.adjusted(16, 8, -16, -8), int(Qt::AlignCenter) | int(Qt::TextWordWrap),
                     message());
  }
  painter.restore();
}

void PaintedPlot::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintTo(painter, rect(), theme_);
  if (!hasFocus()) return;
  painter.setPen(QPen(theme_.focus, 2));
  painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

}  // namespace gazewright
