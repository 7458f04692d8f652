#include <algorithm>
#include <cmath>

#include "app/plots/chart_items.h"
#include "app/plots/format.h"
#include "app/plots/text.h"

namespace gazewright {
namespace {

QString with_unit(const QString& number, const QString& unit) {
  if (unit.isEmpty()) return number;
  return unit == QStringLiteral("°") ? number + unit : number + QChar(0x202F) + unit;
}

}  // namespace

void CursorItem::draw(QCPPainter* painter) {
  if (!chart_.message.isEmpty()) return;
  const QRectF inside = area();
  double snapped = std::nan(""), at_px = std::nan("");
  QStringList lines;
  painter->setAntialiasing(true);
  for (const Series& series : chart_.series) {
    const qsizetype i = sample_at(series, x, time_s);
    if (i < 0) continue;
    if (!series.is_path() && std::isnan(snapped)) snapped = series.x[i];
    const QPointF dot = pixel(series.x[i], series.y[i]);
    QString text = with_unit(number_text(series.y[i]), chart_.y_unit);
    if (series.is_path()) {
      text += QStringLiteral(", ") + with_unit(number_text(series.x[i]), chart_.x_unit);
      at_px = dot.x();
    }
    lines << series.name + QStringLiteral("  ") + text;
    if (!std::isfinite(series.y[i]) || !inside.contains(dot)) continue;
    painter->setPen(QPen(style_.theme.card, 1.5));
    painter->setBrush(colour(series.axis));
    painter->drawEllipse(dot, 4, 4);
  }
  if (std::isfinite(snapped)) {
    at_px = pixel(snapped, 0).x();
    lines.prepend(chart_.x_name + QStringLiteral("  ") +
                  with_unit(number_text(snapped), chart_.x_unit));
    if (at_px >= inside.left() && at_px <= inside.right()) {
      painter->setAntialiasing(false);
      painter->setPen(QPen(style_.theme.text, 1));
      painter->drawLine(QLineF(at_px, inside.top(), at_px, inside.bottom()));
    }
  }
  if (!lines.isEmpty() && std::isfinite(at_px)) drawReadout(painter, at_px, lines);
}

void CursorItem::drawReadout(QCPPainter* painter, double at_px, const QStringList& lines) const {
  const QFontMetricsF metrics(style_.font);
  double width = 0;
  for (const QString& line : lines) width = std::max(width, metrics.horizontalAdvance(line));
  const QRectF inside = area();
  const QSizeF size(width + 14, metrics.height() * double(lines.size()) + 8);
  const bool right = at_px + 10 + size.width() <= inside.right() || at_px < inside.center().x();
  const double left = right ? std::min(at_px + 10, parentPlot()->width() - size.width() - 1)
                            : std::max(1.0, at_px - 10 - size.width());
  const double top = std::max(inside.top() + 4, inside.bottom() - size.height() - 8);
  const QRectF box(QPointF(left, top), size);
  painter->setAntialiasing(true);
  painter->setPen(QPen(style_.theme.control, 1));
  painter->setBrush(style_.theme.card);
  painter->drawRoundedRect(box, 4, 4);
  painter->setPen(style_.theme.text);
  painter->setFont(style_.font);
  painter->drawText(box.adjusted(7, 4, -7, -4), Qt::AlignLeft | Qt::AlignTop, lines.join('\n'));
}

}  // namespace gazewright
