#include "app/window/drawing_canvas.h"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/plots/dial_view.h"

namespace gazewright {
namespace {
constexpr double kDragFrom_px = 3;  // a shorter move is a press
}  // namespace

DrawingCanvas::DrawingCanvas()
    : theme(theme_for(ThemeKind::light)),
      dials_{new TravelDial(Axis::pan, this), new TravelDial(Axis::tilt, this)} {
  for (TravelDial* dial : dials_) dial->setHand(0);
  setLayoutDirection(Qt::LeftToRight);  // as the rig is, in every language
  setMinimumSize(220, 160);
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  describe();
}

QRectF DrawingCanvas::dialRect(Axis axis) const {
  const double tall = std::clamp(height() * 0.32, 90.0, 180.0), wide = width() / 2.0;
  return {axis == Axis::pan ? 0.0 : wide, height() - tall, wide, tall};
}

QRectF DrawingCanvas::drawingRect() const {
  return QRectF(0, 0, width(), height() - dialRect(Axis::pan).height() - 4);
}

bool DrawingCanvas::hasRoomForAll() const { return has_room_for_all_views(drawingRect().size()); }

const std::vector<DrawnView>& DrawingCanvas::drawnViews() {
  if (!drawn_.empty()) return drawn_;
  const bool all = wants_all && hasRoomForAll();
  drawn_ = all ? all_views(drawingRect(), rig, pose.pan_rad, pose.tilt_rad)
               : std::vector{one_view(drawingRect(), rig, view, pose.pan_rad, pose.tilt_rad)};
  if (isDragging()) {  // a picture that grows under the hand would run away from it
    for (DrawnView& drawn : drawn_) {
      for (const DrawnView& held : drag_->frame) {
        if (held.view() != drawn.view()) continue;
        drawn.projection.px_per_m = held.projection.px_per_m;
        drawn.projection.origin = held.projection.origin;
      }
    }
  }
  return drawn_;
}

const DrawnView* DrawingCanvas::drawnOf(const DrawingHandle& handle) {
  const auto& views = drawnViews();
  const auto at = std::ranges::find(views, handle.view, &DrawnView::view);
  return at == views.end() ? nullptr : &*at;
}

const DrawnView* DrawingCanvas::drawnAt(QPointF point) {
  const auto& views = drawnViews();
  const auto at =
      std::ranges::find_if(views, [&](const DrawnView& v) { return v.rect.contains(point); });
  return at == views.end() ? nullptr : &*at;
}

std::vector<DrawingHandle> DrawingCanvas::handles() {
  std::vector<DrawingHandle> all;
  for (const DrawnView& drawn : drawnViews()) {
    const auto some = drawing_handles(rig, drawn);
    all.insert(all.end(), some.begin(), some.end());
  }
  return all;
}

std::vector<DrawingHandle> DrawingCanvas::handlesOf(View of) {
  for (const DrawnView& drawn : drawnViews()) {
    if (drawn.view() == of) return drawing_handles(rig, drawn);
  }
  return {};
}

std::optional<DrawingHandle> DrawingCanvas::fresh(const DrawingHandle& like) {
  for (const DrawingHandle& handle : handlesOf(like.view)) {
    if (handle.is_same_as(like)) return handle;
  }
  return std::nullopt;
}

/// The nearest handle within reach. Where several lie on each other: the chosen one, then the
/// selected body's; else the body's under the point, to be taken hold of anywhere.
std::optional<DrawingHandle> DrawingCanvas::handleAt(QPointF point) {
  const DrawnView* drawn = drawnAt(point);
  if (!drawn) return std::nullopt;
  std::optional<DrawingHandle> best;
  double least = kHandleReach + 1e-9;
  for (const DrawingHandle& handle : drawing_handles(rig, *drawn)) {
    double away =
        std::max(std::abs(handle.at.x() - point.x()), std::abs(handle.at.y() - point.y()));
    if (away > kHandleReach) continue;
    if (handle.has_body() && selected == handle.body) away -= 0.5;
    if (chosen_ && handle.is_same_as(*chosen_)) away -= 1;
    if (away >= least) continue;
    least = away;
    best = handle;
  }
  if (best) return best;
  const auto body = body_at(point, rig, drawn->projection);
  return body ? fresh({HandleKind::body, *body, drawn->view(), {}}) : std::nullopt;
}

void DrawingCanvas::choose(const std::optional<DrawingHandle>& handle) {
  chosen_ = handle;
  if (chosen_) view = chosen_->view;
  key_run_ = false;
  describe();
  update();
}

void DrawingCanvas::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  const auto handle = handleAt(event->position());
  choose(handle);
  if (!handle) return;
  drag_ = Drag{*handle,           *drawnOf(*handle), drawnViews(), rig,
               event->position(), event->position(), {},           false};
}

void DrawingCanvas::mouseMoveEvent(QMouseEvent* event) {
  if (!drag_) return hover(event->position());
  dragTo(event->position(), event->modifiers() & Qt::AltModifier);
}

void DrawingCanvas::dragTo(QPointF point, bool free) {
  drag_->last = point;
  const QPointF way = point - drag_->pressed;
  if (!drag_->moved && std::hypot(way.x(), way.y()) < kDragFrom_px) return;
  const bool first = !std::exchange(drag_->moved, true);
  if (first) {
    setCursor(Qt::ClosedHandCursor);
    emit dragStarted();
  }
  const auto values = handle_values(drag_->before, drag_->drawn, drag_->handle, way, !free);
  const auto is_same = [](const FieldValue& a, const FieldValue& b) {
    return a.path == b.path && a.value_si == b.value_si;
  };
  if (!std::ranges::equal(values, drag_->sent, is_same)) {
    drag_->sent = values;
    emit moved(
        {drag_->handle, handle_name(drag_->before, drag_->drawn, drag_->handle), values, !first});
  }
  if (!drag_) return;
  describe();
  update();
}

void DrawingCanvas::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !drag_) return;
  const Drag ended = *drag_;
  endDrag();
  if (!ended.moved && ended.handle.has_body()) emit bodyPressed(ended.handle.body.path());
}

void DrawingCanvas::endDrag() {
  if (!drag_) return;
  const bool moved = drag_->moved;
  drag_.reset();
  unsetCursor();
  paintAgain();  // to a scale of its own again
  if (moved) emit dragEnded();
}

void DrawingCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
  endDrag();
  const auto handle = handleAt(event->position());
  if (!handle) return;
  const std::string field = handle_field(rig, *drawnOf(*handle), *handle);
  emit fieldChosen(QString::fromStdString(field));
}

void DrawingCanvas::hover(QPointF point) {
  const auto handle = handleAt(point);
  const bool same = handle ? hovered_ && handle->is_same_as(*hovered_) : !hovered_;
  if (same) return;
  hovered_ = handle;
  setCursor(handle ? Qt::OpenHandCursor : Qt::ArrowCursor);
  update();
}

void DrawingCanvas::enterEvent(QEnterEvent*) {
  pointer_inside_ = true;
  update();
}

void DrawingCanvas::leaveEvent(QEvent*) {
  pointer_inside_ = false;
  hovered_.reset();
  if (!drag_) unsetCursor();
  update();
}

QString DrawingCanvas::tip(const DrawingHandle& handle) {
  const DrawnView* drawn = drawnOf(handle);
  if (!drawn) return {};
  QString text = handle_name(rig, *drawn, handle) + QStringLiteral(": ") +
                 handle_value(rig, *drawn, handle) + QStringLiteral(". ");
  if (handle.has_body()) {
    for (const QString& line : counterweight_lines(rig, handle.body))
      text += line + QStringLiteral(". ");
  }
  return text + tr("Drag it, or use the arrow keys (Shift: fine, Page keys: coarse). Alt: not on "
                   "whole millimetres. Double-click to type.");
}

bool DrawingCanvas::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto handle = handleAt(help->pos());
    QToolTip::showText(help->globalPos(), handle ? tip(*handle) : QString(), this);
    return true;
  }
  return QWidget::event(event);
}

void DrawingCanvas::paintAgain() {
  picture_.forget();
  drawn_.clear();
  if (chosen_) chosen_ = fresh(*chosen_);
  if (hovered_) hovered_ = fresh(*hovered_);
  describe();
  update();
}

void DrawingCanvas::resizeEvent(QResizeEvent*) {
  for (Axis axis : kAxes) dial(axis)->setGeometry(dialRect(axis).toRect());
  endDrag();  // what was taken hold of lies elsewhere now; the move so far stays
  paintAgain();
  if (std::exchange(drew_all_, hasRoomForAll()) != hasRoomForAll()) emit viewsChanged();
}

}  // namespace gazewright
