#include <algorithm>
#include <cmath>

#include "app/plots/chart_items.h"

namespace gazewright {

void CursorItem::draw(QCPPainter* painter) {
  if (!chart_.message.isEmpty()) return;
  const Readout readout = read(chart_, a, b);
  if (readout.series.empty()) return;
  const bool both = std::isfinite(b.x) || std::isfinite(b.time_s);
  for (const SeriesReading& reading : readout.series) drawDots(painter, reading);
  drawLine(painter, readout.xa, both ? QStringLiteral("A") : QString());
  drawLine(painter, readout.xb, QStringLiteral("B"));
  const double at = std::isfinite(readout.xa) ? readout.xa : readout.series.back().xa;
  if (!std::isfinite(at)) return;  // B alone waits for A
  const double other = std::isfinite(readout.xb) ? readout.xb : at;
  drawReadout(painter, pixel(at, 0).x(), pixel(other, 0).x(), readout_lines(chart_, readout));
}

/// Points on the lines; hollow ones are those of cursor B.
void CursorItem::drawDots(QCPPainter* painter, const SeriesReading& reading) const {
  painter->setAntialiasing(true);
  const auto dot = [&](double x, double y, const QColor& edge, const QColor& fill) {
    const QPointF at = pixel(x, y);
    if (!std::isfinite(y) || !area().contains(at)) return;
    painter->setPen(QPen(edge, 1.5));
    painter->setBrush(fill);
    painter->drawEllipse(at, 4, 4);
  };
  dot(reading.xb, reading.yb, colour(reading.axis), style_.theme.card);
  dot(reading.xa, reading.ya, style_.theme.card, colour(reading.axis));
}

void CursorItem::drawLine(QCPPainter* painter, double x, const QString& letter) const {
  const double at = pixel(x, 0).x();
  const QRectF inside = area();
  if (!(at >= inside.left() && at <= inside.right())) return;
  painter->setAntialiasing(false);
  QPen pen(style_.theme.text, 1);
  if (letter == QStringLiteral("B")) pen.setDashPattern({4, 3});
  painter->setPen(pen);
  painter->drawLine(QLineF(at, inside.top(), at, inside.bottom()));
  if (letter.isEmpty()) return;
  const QFontMetricsF metrics(style_.font);
  QRectF box(0, inside.top(), metrics.horizontalAdvance(letter) + 6, metrics.height());
  box.moveCenter({at, box.center().y()});
  painter->fillRect(box, style_.theme.text);
  painter->setPen(style_.theme.card);
  painter->setFont(style_.font);
  painter->drawText(box, Qt::AlignCenter, letter);
}

/// Beside both cursors where it finds room there, else beside A. In a low plot with many lines the
/// last ones stay away; the table of the cursors has them all.
void CursorItem::drawReadout(QCPPainter* painter, double at_px, double other_px,
                             QStringList lines) const {
  const QFontMetricsF metrics(style_.font);
  const auto room = qsizetype((parentPlot()->height() - 10) / metrics.height());
  if (lines.size() > room && room > 1) {
    lines.resize(room);
    lines.last() = QStringLiteral("…");
  }
  double width = 0;
  for (const QString& line : lines) width = std::max(width, metrics.horizontalAdvance(line));
  const QRectF inside = area();
  const QSizeF size(width + 14, metrics.height() * double(lines.size()) + 8);
  const auto [first, last] = std::minmax(at_px, other_px);
  const double beside = size.width() + 10;
  const bool fits_right = last + beside <= inside.right();
  const bool fits_left = first - beside >= inside.left();
  const bool right = fits_right || (!fits_left && at_px < inside.center().x());
  const double from = fits_right ? last : fits_left ? first : at_px;
  const double left = right ? std::min(from + 10, parentPlot()->width() - size.width() - 1)
                            : std::max(1.0, from - beside);
  const double wanted = std::max(inside.top() + 4, inside.bottom() - size.height() - 8);
  const double top = std::max(1.0, std::min(wanted, parentPlot()->height() - size.height() - 1));
  const QRectF box(QPointF(left, top), size);
  painter->setAntialiasing(true);
  painter->setPen(QPen(style_.theme.control, 1));
  painter->setBrush(style_.theme.card);
  painter->drawRoundedRect(box, 4, 4);
  painter->setPen(style_.theme.text);
  painter->setFont(style_.font);
  painter->drawText(box.adjusted(7, 4, -7, -4), Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignTop,
                    lines.join('\n'));
}

}  // namespace gazewright
