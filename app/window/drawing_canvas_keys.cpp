#include <QKeyEvent>
#include <algorithm>
#include <cmath>

#include "app/window/drawing_canvas.h"

/// The drawing by keyboard, and its words for screen readers.
namespace gazewright {
namespace {

constexpr double kFine_m = 1e-4, kUsual_m = 1e-3, kCoarse_m = 1e-2;

}  // namespace

void DrawingCanvas::describe() {
  const DrawnView* drawn = chosen_ ? drawnOf(*chosen_) : nullptr;
  const QString name =
      drawn ? handle_name(rig, *drawn, *chosen_) : tr("Drawing of the rig to scale");
  const QString text =
      drawn ? tr("%1. Arrow keys move it, Shift: fine, Page keys: coarse; Tab: the next handle.")
                  .arg(handle_value(rig, *drawn, *chosen_))
            : tr("Tab goes through its handles, Space plays the move.");
  if (name != accessibleName()) setAccessibleName(name);
  if (text != accessibleDescription()) setAccessibleDescription(text);
}

/// Tab goes from handle to handle of the view and then on to the dials; after Escape at once.
bool DrawingCanvas::focusNextPrevChild(bool next) {
  if (!hasFocus()) return QWidget::focusNextPrevChild(next);
  const std::vector<DrawingHandle> all = handlesOf(view);
  const auto here =
      chosen_
          ? std::ranges::find_if(
                all, [this](const DrawingHandle& handle) { return handle.is_same_as(*chosen_); })
          : all.end();
  if (here == all.end()) return QWidget::focusNextPrevChild(next);
  if (next ? here + 1 == all.end() : here == all.begin()) return QWidget::focusNextPrevChild(next);
  choose(*(next ? here + 1 : here - 1));
  return true;
}

void DrawingCanvas::focusInEvent(QFocusEvent* event) {
  const auto reason = event->reason();
  const std::vector<DrawingHandle> all = handlesOf(view);
  if (!all.empty() && (reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason))
    choose(reason == Qt::TabFocusReason ? all.front() : all.back());
  update();
  QWidget::focusInEvent(event);
}

void DrawingCanvas::focusOutEvent(QFocusEvent* event) {
  key_run_ = false;
  update();
  QWidget::focusOutEvent(event);
}

/// @param right_up  which way on the page; a handle with one value takes right and up as more where
/// its own direction does not say
void DrawingCanvas::step(QPointF right_up, double by_m) {
  const DrawnView* drawn = chosen_ ? drawnOf(*chosen_) : nullptr;
  if (!drawn || drag_) return;
  QPointF move = QPointF(right_up.x(), -right_up.y()) * by_m * drawn->projection.px_per_m;
  if (const auto slope = handle_slope(rig, *drawn, *chosen_)) {
    const bool by_page = !chosen_->has_body();  // the tilt axis goes where the arrow shows
    const double along = by_page ? QPointF::dotProduct(move, *slope) : right_up.x() + right_up.y();
    if (along == 0) return;
    move = *slope * (along > 0 ? by_m : -by_m);
  }
  const auto values = handle_values(rig, *drawn, *chosen_, move, false);
  if (values.empty()) return;
  emit moved({*chosen_, handle_name(rig, *drawn, *chosen_), values, std::exchange(key_run_, true)});
}

bool DrawingCanvas::stepKey(const QKeyEvent& event) {
  const double by = event.modifiers() & Qt::ShiftModifier ? kFine_m : kUsual_m;
  switch (event.key()) {
    case Qt::Key_Left:
      step({-1, 0}, by);
      return true;
    case Qt::Key_Right:
      step({1, 0}, by);
      return true;
    case Qt::Key_Up:
      step({0, 1}, by);
      return true;
    case Qt::Key_Down:
      step({0, -1}, by);
      return true;
    case Qt::Key_PageUp:
    case Qt::Key_PageDown: {
      const bool across = chosen_ && chosen_->kind == HandleKind::axis_across;
      const double way = event.key() == Qt::Key_PageUp ? 1 : -1;
      const bool sideways = across || event.modifiers() & Qt::ShiftModifier;
      step(sideways ? QPointF(way, 0) : QPointF(0, way), kCoarse_m);
      return true;
    }
    default:
      return false;
  }
}

void DrawingCanvas::keyPressEvent(QKeyEvent* event) {
  if (stepKey(*event)) return;
  switch (event->key()) {
    case Qt::Key_Space:
      emit playAsked();
      return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (const DrawnView* drawn = chosen_ ? drawnOf(*chosen_) : nullptr)
        emit fieldChosen(QString::fromStdString(handle_field(rig, *drawn, *chosen_)));
      return;
    case Qt::Key_Escape:
      if (isDragging()) {
        emit takenBack();
        return endDrag();
      }
      if (!chosen_) break;
      return choose(std::nullopt);
    default:
      break;
  }
  QWidget::keyPressEvent(event);
}

}  // namespace gazewright
