#include <algorithm>
#include <cmath>

#include "app/plots/chart_items.h"

namespace gazewright {
namespace {

constexpr double kSampleLength = 18;

void draw_hatching(QCPPainter* painter, const QRectF& strip, bool above, const QColor& colour) {
  painter->setPen(QPen(colour, 1));
  const double y = above ? strip.bottom() : strip.top();
  for (double x = strip.left(); x + 5 <= strip.right(); x += 9) {
    painter->drawLine(QLineF(x, y, x + 5, above ? y - 5 : y + 5));
  }
}

/// Too small for more than the most important labels.
bool is_small(const QRectF& area, const QFontMetricsF& metrics) {
  return area.height() < 8 * metrics.height() || area.width() < 30 * metrics.averageCharWidth();
}

/// Of the line above the axes, clear of the uppermost tick's label.
double header_top(const QRectF& area, const QFontMetricsF& metrics) {
  return area.top() - 4.0 / 3 * metrics.height() - 6;
}

/// The text of an entry that fits, empty where none does.
QString legend_text(const LegendEntry& entry, const QFontMetricsF& metrics, double room) {
  for (const QString& text : {entry.text, entry.brief}) {
    if (metrics.horizontalAdvance(text) + kSampleLength + 15 <= room) return text;
  }
  return {};
}

}  // namespace

/// Entries that no name of a line says.
QVector<int> MarksItem::unsaidEntries() const {
  QVector<int> entries;
  for (int i = 0; i < int(chart_.legend.size()); ++i) {  // the axes come first
    if (!is_said(chart_.legend[i], chart_, line_labels_)) entries.append(i);
  }
  return entries;
}

/// Beside the y title.
double MarksItem::legendRoom(double right) const {
  return right - 6 - QFontMetricsF(style_.font).horizontalAdvance(chart_.y_title) - 10;
}

/// All entries, in as many lines as they take; the last one is that of the y title.
QVector<MarksItem::EntryBox> MarksItem::wrappedBoxes(double right) {
  const QFontMetricsF metrics(style_.font);
  const double room = legendRoom(right), height = metrics.height() + 2;
  QVector<QVector<EntryBox>> rows(1);
  double width = 0;
  for (const int entry : unsaidEntries()) {
    const QString text = legend_text(chart_.legend[entry], metrics, room);
    const double own = metrics.horizontalAdvance(text) + kSampleLength + 15;
    if (width > 0 && width + own > room) {
      rows.append(QVector<EntryBox>());
      width = 0;
    }
    rows.back().append({entry, QRectF(width, 0, own, height)});
    width += own;
  }
  legend_rows_ = int(rows.size());
  QVector<EntryBox> boxes;
  for (int i = 0; i < legend_rows_; ++i) {
    const double y = header_top(area(), metrics) - (legend_rows_ - 1 - i) * height;
    const double left = rows[i].isEmpty() ? right : right - rows[i].back().box.right();
    for (EntryBox& each : rows[i]) {
      each.box.translate(left, y);
      boxes.append(each);
    }
  }
  return boxes;
}

/// Where the entries of the legend lie above the axis rectangle, those that find room, and after
/// them how many do not.
QVector<MarksItem::EntryBox> MarksItem::legendBoxes(double right) const {
  const QFontMetricsF metrics(style_.font);
  const double room = legendRoom(right);
  const QRectF line(0, header_top(area(), metrics), 0, metrics.height() + 2);
  QVector<EntryBox> boxes;
  const QVector<int> entries = unsaidEntries();
  const double of_rest = metrics.horizontalAdvance(QStringLiteral("+00")) + 8;
  double width = 0;
  for (const int entry : entries) {
    const qsizetype rest = entries.size() - boxes.size();
    const double free = room - width - (rest > 1 ? of_rest : 0);
    const QString text = legend_text(chart_.legend[entry], metrics, free);
    const bool fits = !text.isEmpty();
    const double own = fits ? metrics.horizontalAdvance(text) + kSampleLength + 15 : of_rest;
    if (width + own > room) break;
    const QRectF box = line.adjusted(width, 0, width + own, 0);
    boxes.append(fits ? EntryBox{entry, box} : EntryBox{kMoreEntries, box, rest});
    width += own;
    if (!fits) break;
  }
  for (EntryBox& each : boxes) each.box.translate(right - width, 0);
  return boxes;
}

int MarksItem::entryAt(QPointF at) const {
  for (const EntryBox& each : entry_boxes_) {
    if (each.box.contains(at)) return each.entry;
  }
  for (const LineLabel& label : line_labels_) {
    if (!label.box.contains(at)) continue;
    const auto entry = std::ranges::find_if(chart_.legend, [&](const LegendEntry& each) {
      return stands_for(each, chart_.series[label.series]);
    });
    if (entry != chart_.legend.end()) return int(entry - chart_.legend.begin());
  }
  return kNoEntry;
}

/// All lines first, so that none strikes a label out.
void MarksItem::draw(QCPPainter* painter) {
  places_.emplace(area());
  painter->setFont(style_.font);
  line_labels_.clear();
  entry_boxes_.clear();
  if (!chart_.message.isEmpty()) return drawMessage(painter);
  drawTicks(painter);
  for (const Mark& mark : chart_.marks) {
    if (isSeen(mark)) drawMark(painter, mark);
  }
  for (const Mark& mark : chart_.marks) {
    if (isSeen(mark)) labelMark(painter, mark);
  }
  drawBandLabels(painter);
  drawNotes(painter);
  drawLineLabels(painter);
  drawHeader(painter);
}

/// The last ones to look for a place: they have many to choose from.
void MarksItem::drawLineLabels(QCPPainter* painter) {
  line_labels_ = line_labels(
      chart_, QFontMetricsF(style_.font), [this](double x, double y) { return pixel(x, y); },
      area(), *places_);
  for (const LineLabel& label : line_labels_) {
    const Series& series = chart_.series[label.series];
    drawText(painter, label.box, series.name, textColour(series.axis));
  }
}

/// The y title at the left and the legend at the right of the line above the axes; the x title at
/// the right under them.
void MarksItem::drawHeader(QCPPainter* painter) {
  const QFontMetricsF metrics(style_.font);
  const QRectF inside = area();
  const double right = parentPlot()->viewport().right() - 4;
  const QRectF top(6, header_top(inside, metrics), right - 6, metrics.height() + 2);
  painter->setPen(style_.theme.quiet);
  painter->drawText(top, Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignVCenter,
                    metrics.elidedText(chart_.y_title, Qt::ElideMiddle, top.width()));
  const QRectF bottom(6, parentPlot()->viewport().bottom() - metrics.height() - 2,
                      inside.right() - 6, metrics.height() + 2);
  painter->drawText(bottom, Qt::AlignRight | Qt::AlignAbsolute | Qt::AlignVCenter,
                    metrics.elidedText(chart_.x_title, Qt::ElideMiddle, bottom.width()));
  entry_boxes_ = style_.legend_rows > 0 ? wrappedBoxes(right) : legendBoxes(right);
  for (const EntryBox& each : entry_boxes_) {
    if (each.entry != kMoreEntries) {
      drawEntry(painter, chart_.legend[each.entry], each.box);
      continue;
    }
    painter->setPen(style_.theme.quiet);
    painter->drawText(each.box, Qt::AlignCenter, QStringLiteral("+%1").arg(each.left_out));
  }
}

/// A sample of the line and its name, struck through where it is switched off.
void MarksItem::drawEntry(QCPPainter* painter, const LegendEntry& entry, const QRectF& box) const {
  painter->setAntialiasing(false);
  QPen pen = line_pen(style_, entry.axis, entry.line);
  if (entry.hidden) pen.setColor(style_.theme.grid);
  painter->setPen(pen);
  if (entry.line == Line::shaded) {
    painter->fillRect(QRectF(box.left(), box.center().y() - 4, kSampleLength, 8),
                      entry.hidden ? style_.theme.grid : ribbon_colour(style_, entry.axis));
  } else {
    painter->drawLine(
        QLineF(box.left(), box.center().y(), box.left() + kSampleLength, box.center().y()));
  }
  painter->setPen(entry.hidden ? style_.theme.quiet : textColour(entry.axis));
  QFont font = style_.font;
  font.setStrikeOut(entry.hidden);
  painter->setFont(font);
  painter->drawText(box.adjusted(kSampleLength + 4, 0, 0, 0),
                    Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignVCenter,
                    legend_text(entry, QFontMetricsF(style_.font), box.width() + 0.5));
  painter->setFont(style_.font);
}

QPointF MarksItem::bracketEnd(const Mark& mark) const {
  return {pixel(mark.x_end, 0).x(), area().bottom() - (mark.axis == Axis::tilt ? 22.0 : 8.0) -
                                        StretchesItem::height(chart_, style_.font)};
}

bool MarksItem::isSeen(const Mark& mark) const {
  const QRectF inside = area();
  const QPointF at = pixel(mark.x, mark.y);
  switch (mark.kind) {
    case Mark::Kind::upright:
      return at.x() >= inside.left() && at.x() <= inside.right();
    case Mark::Kind::bracket: {
      // In a low plot it would stand among the curves; the readings say it anyway.
      constexpr double kLowerPart = 0.6;
      if (inside.bottom() - bracketEnd(mark).y() > kLowerPart * inside.height()) return false;
      const double to = bracketEnd(mark).x();
      return to >= inside.left() && at.x() <= inside.right() && to - at.x() >= 6;
    }
    case Mark::Kind::limit_above:
    case Mark::Kind::limit_below:
    case Mark::Kind::level:
      return at.y() >= inside.top() && at.y() <= inside.bottom();
    case Mark::Kind::point:
    case Mark::Kind::ring:
    case Mark::Kind::label:
      break;
  }
  return inside.adjusted(-1, -1, 1, 1).contains(at);
}

void MarksItem::drawMark(QCPPainter* painter, const Mark& mark) {
  switch (mark.kind) {
    case Mark::Kind::upright:
      return drawUpright(painter, mark);
    case Mark::Kind::bracket:
      return drawBracket(painter, mark);
    case Mark::Kind::limit_above:
    case Mark::Kind::limit_below:
    case Mark::Kind::level:
      return drawLimit(painter, mark);
    case Mark::Kind::label:
      return;
    case Mark::Kind::point:
    case Mark::Kind::ring:
      break;
  }
  const bool ring = mark.kind == Mark::Kind::ring;
  painter->setAntialiasing(true);
  painter->setPen(QPen(ring ? colour(mark.axis) : style_.theme.card, 1.5));
  painter->setBrush(ring ? style_.theme.card : colour(mark.axis));
  painter->drawEllipse(pixel(mark.x, mark.y), 4, 4);
}

void MarksItem::labelMark(QCPPainter* painter, const Mark& mark) {
  if (mark.minor && is_small(area(), QFontMetricsF(style_.font))) return;
  const QPointF at = pixel(mark.x, mark.y);
  const auto label = [&](QPointF point, Qt::Alignment side) {
    drawLabel(painter, point, side, mark.text, textColour(mark.axis));
  };
  switch (mark.kind) {
    case Mark::Kind::upright:
      return label(at, {});
    case Mark::Kind::bracket:
      return label(bracketEnd(mark) + QPointF(5, 0), Qt::AlignLeft | Qt::AlignVCenter);
    case Mark::Kind::limit_above:
    case Mark::Kind::limit_below:
    case Mark::Kind::level:
      return label({area().right() - 3, at.y() + 2}, Qt::AlignRight | Qt::AlignTop);
    case Mark::Kind::label:
      return label(at + QPointF(5, 0), Qt::AlignLeft | Qt::AlignVCenter);
    case Mark::Kind::point:
    case Mark::Kind::ring:
      return label(at + QPointF(0, -6), Qt::AlignHCenter | Qt::AlignBottom);
  }
}

void MarksItem::drawUpright(QCPPainter* painter, const Mark& mark) {
  const double x = pixel(mark.x, 0).x();
  painter->setAntialiasing(false);
  QPen pen(colour(mark.axis), 1.2);
  pen.setDashPattern(mark.axis == Axis::tilt ? QVector<qreal>{5, 2, 1.5, 2} : QVector<qreal>{2, 2});
  painter->setPen(pen);
  painter->drawLine(QLineF(x, area().top(), x, area().bottom()));
  places_->addUpright(x);
}

void MarksItem::drawBracket(QCPPainter* painter, const Mark& mark) const {
  const double left = area().left(), right = area().right(), y = bracketEnd(mark).y();
  const double from = pixel(mark.x, 0).x(), to = bracketEnd(mark).x();
  painter->setAntialiasing(false);
  painter->setPen(QPen(colour(mark.axis), 1.2));
  painter->drawLine(QLineF(std::max(from, left), y, std::min(to, right), y));
  for (const double x : {from, to})
    if (x >= left && x <= right) painter->drawLine(QLineF(x, y - 3, x, y + 3));
}

void MarksItem::drawLimit(QCPPainter* painter, const Mark& mark) const {
  const QRectF inside = area();
  const double y = pixel(0, mark.y).y();
  painter->setAntialiasing(false);
  painter->setPen(QPen(colour(mark.axis), 1));
  painter->drawLine(QLineF(inside.left(), y, inside.right(), y));
  if (mark.kind == Mark::Kind::level) return;
  const bool above = mark.kind == Mark::Kind::limit_above;
  draw_hatching(painter, QRectF(inside.left(), above ? y - 5 : y, inside.width(), 5), above,
                colour(mark.axis));
}

void MarksItem::drawBandLabels(QCPPainter* painter) {
  const QFontMetricsF metrics(style_.font);
  const QRectF inside = area();
  QStringList named;
  for (const Band& band : chart_.bands) {
    if (band.upright) {
      const double left = pixel(band.range.lo, 0).x(), right = pixel(band.range.hi, 0).x();
      const bool is_wide = metrics.horizontalAdvance(band.label) < 1.5 * (right - left);
      if (named.contains(band.label)) continue;  // one explanation serves both axes
      if (!is_wide && is_small(inside, metrics)) continue;
      const double x = (left + right) / 2;
      drawLabel(painter, {x, inside.bottom() - 12}, Qt::AlignHCenter | Qt::AlignBottom, band.label,
                style_.theme.quiet);
      named << band.label;
      continue;
    }
    const double upper = pixel(0, band.range.hi).y(), lower = pixel(0, band.range.lo).y();
    if (upper > inside.bottom() || lower < inside.top()) continue;
    const bool is_edge_seen = upper >= inside.top();  // else the label stands in the band
    drawLabel(painter, {inside.right() - 3, is_edge_seen ? upper - 1 : inside.top() + 2},
              Qt::AlignRight | (is_edge_seen ? Qt::AlignBottom : Qt::AlignTop), band.label,
              textColour(band.axis));
  }
}

void MarksItem::drawTicks(QCPPainter* painter) const {
  const QRectF inside = area();
  painter->setAntialiasing(false);
  painter->setPen(QPen(style_.theme.control, 1));
  for (const double tick : chart_.ticks) {
    const double x = pixel(tick, 0).x();
    if (x < inside.left() || x > inside.right()) continue;
    painter->drawLine(QLineF(x, inside.bottom(), x, inside.bottom() - 7));
  }
}

void MarksItem::drawNotes(QCPPainter* painter) {
  const QFontMetricsF metrics(style_.font);
  const QRectF inside = area();
  QPointF at = inside.topLeft() + QPointF(6, 3);
  for (const QString& note : chart_.notes) {
    drawLabel(painter, at, Qt::AlignLeft | Qt::AlignTop,
              metrics.elidedText(note, Qt::ElideRight, inside.width() - 12), style_.theme.bad);
    at.ry() += metrics.height() + 2;
  }
}

void MarksItem::drawMessage(QCPPainter* painter) const {
  painter->setPen(style_.theme.quiet);
  painter->drawText(QRectF(parentPlot()->viewport()).adjusted(16, 8, -16, -8),
                    int(Qt::AlignCenter) | int(Qt::TextWordWrap), chart_.message);
}

void MarksItem::drawLabel(QCPPainter* painter, QPointF at, Qt::Alignment side, const QString& text,
                          const QColor& text_colour) {
  if (text.isEmpty()) return;
  const QFontMetricsF metrics(style_.font);
  const QString shown = metrics.elidedText(text, Qt::ElideRight, area().width() - 6);
  const QSizeF size(metrics.horizontalAdvance(shown) + 4, metrics.height());
  const QRectF box = side ? places_->place(at, size, side) : places_->placeBeside(at.x(), size);
  if (!box.isEmpty()) drawText(painter, box, shown, text_colour);
}

void MarksItem::drawText(QCPPainter* painter, const QRectF& box, const QString& text,
                         const QColor& text_colour) const {
  QColor ground = style_.theme.card;
  ground.setAlphaF(0.8F);
  painter->fillRect(box, ground);
  painter->setPen(text_colour);
  painter->drawText(box, Qt::AlignCenter, text);
}

}  // namespace gazewright
