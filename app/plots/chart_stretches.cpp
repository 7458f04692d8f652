#include <algorithm>
#include <cmath>

#include "app/plots/chart_items.h"

/// The strips above the x axis. A row for each axis that has one, pan above tilt.
namespace gazewright {
namespace {

constexpr double kSpacing = 7;  // of hatching lines
constexpr double kSwatch = 24;  // of the key, wide

QVector<Axis> rows_of(const Chart& chart) {
  QVector<Axis> rows;
  for (const Axis axis : kAxes) {
    if (std::ranges::any_of(chart.stretches, [axis](const Stretch& s) { return s.axis == axis; })) {
      rows.append(axis);
    }
  }
  return rows;
}

/// Lines through a box with a slope: pixels down for each pixel to the right.
void draw_slanted(QCPPainter* painter, const QRectF& box, bool rising) {
  const double h = box.height();
  for (double x = std::floor((box.left() - h) / kSpacing) * kSpacing; x < box.right();
       x += kSpacing) {
    painter->drawLine(rising ? QLineF(x, box.bottom(), x + h, box.top())
                             : QLineF(x, box.top(), x + h, box.bottom()));
  }
}

void draw_upright(QCPPainter* painter, const QRectF& box) {
  for (double x = std::ceil(box.left() / kSpacing) * kSpacing; x < box.right(); x += kSpacing) {
    painter->drawLine(QLineF(x, box.top(), x, box.bottom()));
  }
}

void draw_level(QCPPainter* painter, const QRectF& box) {
  for (const double part : {0.25, 0.5, 0.75}) {
    const double y = box.top() + part * box.height();
    painter->drawLine(QLineF(box.left(), y, box.right(), y));
  }
}

void draw_dots(QCPPainter* painter, const QRectF& box) {
  for (double x = std::ceil(box.left() / kSpacing) * kSpacing; x < box.right(); x += kSpacing) {
    for (const double part : {0.3, 0.7}) {
      painter->drawRect(QRectF(x, box.top() + part * box.height() - 0.5, 1, 1));
    }
  }
}

void hatch(QCPPainter* painter, const QRectF& box, Hatching hatching) {
  switch (hatching) {
    case Hatching::none:
      return;
    case Hatching::rising:
      return draw_slanted(painter, box, true);
    case Hatching::falling:
      return draw_slanted(painter, box, false);
    case Hatching::crossed:
      draw_slanted(painter, box, true);
      return draw_slanted(painter, box, false);
    case Hatching::upright:
      return draw_upright(painter, box);
    case Hatching::level:
      return draw_level(painter, box);
    case Hatching::grid:
      draw_upright(painter, box);
      return draw_level(painter, box);
    case Hatching::dots:
      return draw_dots(painter, box);
  }
}

}  // namespace

QVector<Stretch> hatching_key(const Chart& chart) {
  QVector<Stretch> key;
  for (const Stretch& stretch : chart.stretches) {
    const auto is_same = [&](const Stretch& known) { return known.text == stretch.text; };
    if (std::ranges::none_of(key, is_same)) key.append(stretch);
  }
  return key;
}

double StretchesItem::height(const Chart& chart, const QFont& font) {
  return double(rows_of(chart).size()) * QFontMetricsF(font).height();
}

void StretchesItem::draw(QCPPainter* painter) {
  if (!chart_.message.isEmpty() || chart_.stretches.isEmpty()) return;
  const QVector<Axis> rows = rows_of(chart_);
  const QRectF inside = area();
  const double row_height = QFontMetricsF(style_.font).height();
  const double top = inside.bottom() - double(rows.size()) * row_height;
  painter->save();
  painter->setFont(style_.font);
  painter->setAntialiasing(false);
  painter->setClipRect(inside, Qt::IntersectClip);
  QStringList written;
  for (const Stretch& stretch : chart_.stretches) {
    const double from = std::max(inside.left(), pixel(stretch.range.lo, 0).x());
    const double to = std::min(inside.right(), pixel(stretch.range.hi, 0).x());
    const double y = top + double(rows.indexOf(stretch.axis)) * row_height;
    if (to > from && drawStretch(painter, stretch, {from, y + 1, to - from, row_height - 2}))
      written << stretch.text;
  }
  painter->setClipping(false);
  drawKey(painter, written);
  painter->restore();
}

/// As many as find room before the x title, what no strip says first.
void StretchesItem::drawKey(QCPPainter* painter, const QStringList& written) const {
  const QFontMetricsF metrics(style_.font);
  QVector<Stretch> key = hatching_key(chart_);
  std::stable_partition(key.begin(), key.end(),
                        [&](const Stretch& entry) { return !written.contains(entry.text); });
  const QRectF line(6, parentPlot()->viewport().bottom() - metrics.height() - 2,
                    area().right() - 24 - metrics.horizontalAdvance(chart_.x_title),
                    metrics.height() + 2);
  double x = line.left();
  for (const Stretch& entry : key) {
    const QRectF swatch(x, line.top() + 3, kSwatch, line.height() - 6);
    const double right = swatch.right() + 4 + metrics.horizontalAdvance(entry.text);
    if (right > line.right()) continue;
    painter->setPen(QPen(style_.theme.quiet, 1));
    painter->save();
    painter->setClipRect(swatch);
    hatch(painter, swatch, entry.hatching);
    painter->restore();
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(swatch);
    painter->setPen(style_.theme.text);
    painter->drawText(QPointF(swatch.right() + 4, line.top() + metrics.ascent() + 1), entry.text);
    x = right + 12;
  }
}

/// Ground, hatching, edges, and the word where it finds room.
bool StretchesItem::drawStretch(QCPPainter* painter, const Stretch& stretch, QRectF box) const {
  const QColor line = colour(stretch.axis);
  painter->fillRect(box, style_.theme.card);
  painter->save();
  painter->setClipRect(box, Qt::IntersectClip);
  painter->setPen(QPen(blended(line, style_.theme.card, 0.55), 1));
  hatch(painter, box, stretch.hatching);
  painter->restore();
  painter->setPen(QPen(line, 1));
  painter->setBrush(Qt::NoBrush);
  painter->drawRect(box);
  const double width = QFontMetricsF(style_.font).horizontalAdvance(stretch.text) + 4;
  if (width > box.width() - 4) return false;
  QRectF label(0, 0, width, box.height() - 2);
  label.moveCenter(box.center());
  painter->fillRect(label, style_.theme.card);
  painter->setPen(textColour(stretch.axis));
  painter->drawText(label, Qt::AlignCenter | Qt::TextDontClip, stretch.text);
  return true;
}

}  // namespace gazewright
