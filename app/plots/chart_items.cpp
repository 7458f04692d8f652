#include "app/plots/chart_items.h"

#include <algorithm>
#include <cmath>

#include "app/plots/variant_lines.h"

namespace gazewright {
namespace {

QVector<qreal> dashes(Line line) {
  switch (line) {
    case Line::dashed:
      return {5, 3};
    case Line::dotted:
      return {1.2, 1.8};
    case Line::dash_dotted:
      return {6, 2, 1.2, 2};
    case Line::variant_1:
      return {7, 3};
    case Line::variant_2:
      return {3.5, 3};
    case Line::variant_3:
      return {9, 3, 2, 3};
    case Line::variant_4:
      return {9, 3, 2, 3, 2, 3};
    default:
      return {2, 2.5};
  }
}

}  // namespace

QPen line_pen(const ChartStyle& style, std::optional<Axis> axis, Line line) {
  const QColor colour = axis ? axis_colour(style.theme, *axis) : style.theme.text;
  switch (line) {
    case Line::strong:
      return {colour, 2, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin};
    case Line::fine:
      return {blended(colour, style.theme.text, 0.55), 1};  // wider is slow
    case Line::dashed:
    case Line::ghost:
    case Line::dotted:
    case Line::dash_dotted:
    case Line::variant_1:
    case Line::variant_2:
    case Line::variant_3:
    case Line::variant_4:
    case Line::shaded:
      break;
  }
  QPen pen(colour, chart_parts::is_present(line) ? 1.6 : 1.0);
  pen.setDashPattern(dashes(line));
  pen.setCapStyle(Qt::FlatCap);
  return pen;
}

QColor tint(const ChartStyle& style, std::optional<Axis> axis, float opacity) {
  QColor colour = axis ? axis_colour(style.theme, *axis) : style.theme.control;
  colour.setAlphaF(opacity);
  return colour;
}

QColor ribbon_colour(const ChartStyle& style, std::optional<Axis> axis) {
  return tint(style, axis, axis ? 0.26F : 0.4F);
}

ChartItem::ChartItem(QCustomPlot* plot, const Chart& chart, const ChartStyle& style)
    : QCPAbstractItem(plot), chart_(chart), style_(style) {
  setSelectable(false);
  setClipToAxisRect(false);
}

QRectF ChartItem::area() const { return parentPlot()->axisRect()->rect(); }

QPointF ChartItem::pixel(double x, double y) const {
  return {parentPlot()->xAxis->coordToPixel(x), parentPlot()->yAxis->coordToPixel(y)};
}

QColor ChartItem::colour(std::optional<Axis> axis) const {
  return axis ? axis_colour(style_.theme, *axis) : style_.theme.control;
}

QColor ChartItem::textColour(std::optional<Axis> axis) const {
  return axis ? axis_text_colour(style_.theme, *axis) : style_.theme.quiet;
}

void BandsItem::draw(QCPPainter* painter) {
  for (const Band& band : chart_.bands) {
    const QPointF a = pixel(band.upright ? band.range.lo : 0, band.upright ? 0 : band.range.hi);
    const QPointF b = pixel(band.upright ? band.range.hi : 0, band.upright ? 0 : band.range.lo);
    QRectF strip = area();
    if (band.upright) {
      strip.setLeft(std::max(strip.left(), a.x()));
      strip.setRight(std::min(strip.right(), b.x()));
    } else {
      const double middle = (a.y() + b.y()) / 2, half = std::max(1.0, (b.y() - a.y()) / 2);
      strip.setTop(std::max(area().top(), middle - half));
      strip.setBottom(std::min(area().bottom(), middle + half));
    }
    if (strip.width() <= 0 || strip.height() <= 0) continue;
    painter->fillRect(strip, tint(style_, band.axis, 0.13F));  // where two lie it is darker
  }
}

/// A polygon for each stretch without gaps, forth along the upper line and back along the lower.
void RibbonsItem::draw(QCPPainter* painter) {
  painter->save();
  painter->setClipRect(area(), Qt::IntersectClip);
  painter->setAntialiasing(true);
  painter->setPen(Qt::NoPen);
  for (const Ribbon& ribbon : chart_.ribbons) {
    painter->setBrush(ribbon_colour(style_, ribbon.axis));
    QPolygonF upper, lower;
    const auto fill = [&] {
      std::reverse(lower.begin(), lower.end());
      if (upper.size() > 1) painter->drawPolygon(upper + lower);
      upper.clear();
      lower.clear();
    };
    for (qsizetype i = 0; i < ribbon.x.size(); ++i) {
      const bool is_gap = !std::isfinite(ribbon.low[i]) || !std::isfinite(ribbon.high[i]);
      if (is_gap) fill();
      if (is_gap || !inView(ribbon, i)) continue;
      upper.append(pixel(ribbon.x[i], ribbon.high[i]));
      lower.append(pixel(ribbon.x[i], ribbon.low[i]));
    }
    fill();
  }
  painter->restore();
}

/// Or the neighbour of a sample that is.
bool RibbonsItem::inView(const Ribbon& ribbon, qsizetype at) const {
  const QCPRange view = parentPlot()->xAxis->range();
  const double before = ribbon.x[std::max<qsizetype>(0, at - 1)];
  const double after = ribbon.x[std::min(ribbon.x.size() - 1, at + 1)];
  return after >= view.lower && before <= view.upper;
}

}  // namespace gazewright
