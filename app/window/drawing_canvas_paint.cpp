#include <QPainter>
#include <algorithm>

#include "app/window/drawing_canvas.h"

/// The drawing is kept as a picture; handles, ghost and readout are painted over it.
namespace gazewright {

void DrawingCanvas::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.drawPixmap(0, 0, picture_.of(*this, theme.card, [this](QPainter& picture) {
    for (const DrawnView& drawn : drawnViews()) paint_drawing(picture, drawn, rig, theme, selected);
  }));
  painter.setRenderHint(QPainter::Antialiasing);
  if (isDragging()) {
    QPen pen(theme.ghost, 1.6);
    pen.setDashPattern({3, 3});
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    for (const DrawnView& drawn : drag_->frame) {
      painter.save();
      painter.setClipRect(drawn.rect);
      for (const QPolygonF& outline :
           outlines_moved_by(drag_->before, drawn.projection, drag_->handle)) {
        painter.drawPolygon(outline);
      }
      painter.restore();
    }
  }
  paintHandles(painter);
}

/// Those of the axis and of the selected body always, all of them under the pointer or with the
/// focus.
void DrawingCanvas::paintHandles(QPainter& painter) {
  const bool all = pointer_inside_ || hasFocus();
  const auto is = [](const std::optional<DrawingHandle>& a, const DrawingHandle& b) {
    return a && a->is_same_as(b);
  };
  std::optional<DrawingHandle> told;
  for (const DrawingHandle& handle : handles()) {
    const bool chosen = is(chosen_, handle), hovered = is(hovered_, handle);
    const bool shown = all || chosen || !handle.has_body() || selected == handle.body;
    if (!shown || (drag_ && !chosen)) continue;
    paint_handle(painter, handle, theme, chosen || hovered, chosen && hasFocus());
    if (chosen && (hasFocus() || drag_)) told = handle;
  }
  if (told) paintReadout(painter, isDragging() ? drag_->last : told->at);
  if (hasFocus() && !chosen_) {
    painter.setPen(QPen(theme.focus, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(drawingRect().adjusted(1, 1, -1, -1), 5, 5);
  }
}

QStringList DrawingCanvas::readout() {
  const DrawnView* drawn = chosen_ ? drawnOf(*chosen_) : nullptr;
  if (!drawn) return {};
  QStringList lines{handle_value(rig, *drawn, *chosen_)};
  if (chosen_->has_body()) lines += counterweight_lines(rig, chosen_->body);
  return lines;
}

/// Beside the point, on the side where there is room.
void DrawingCanvas::paintReadout(QPainter& painter, QPointF beside) {
  constexpr double kGap = 14, kPad = 5;
  const QStringList lines = readout();
  const QFontMetricsF metrics(font());
  double wide = 0;
  for (const QString& line : lines) wide = std::max(wide, metrics.horizontalAdvance(line));
  QRectF box(beside.x() + kGap, beside.y() + kGap, wide + 2 * kPad,
             metrics.height() * double(lines.size()) + kPad);
  const QRectF room = drawingRect().adjusted(2, 2, -2, -2);
  if (box.right() > room.right()) box.moveRight(beside.x() - kGap);
  if (box.bottom() > room.bottom()) box.moveBottom(beside.y() - kGap);
  box.moveLeft(
      std::clamp(box.left(), room.left(), std::max(room.left(), room.right() - box.width())));
  painter.setPen(QPen(theme.control, 1));
  painter.setBrush(theme.card);
  painter.drawRoundedRect(box, 3, 3);
  painter.setPen(theme.text);
  for (qsizetype i = 0; i < lines.size(); ++i) {
    painter.drawText(QRectF(box.left() + kPad, box.top() + kPad / 2 + double(i) * metrics.height(),
                            box.width(), metrics.height()),
                     int(Qt::AlignLeft) | int(Qt::AlignVCenter), lines[i]);
  }
}

}  // namespace gazewright
