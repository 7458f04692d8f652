#include "app/plots/dial_view.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>
#include <tuple>

#include "app/plots/text.h"
#include "app/plots/travel_dial.h"
#include "core/rig/fields.h"
#include "core/units/angle.h"

namespace gazewright {
namespace {

constexpr double kDragStep_rad = 0.5 * kDegree_rad;

bool is_same_but_for_hand(const DialPicture& a, const DialPicture& b) {
  const auto limits = [](const Travel& t) {
    return std::tie(t.centre_rad, t.stops_rad, t.cable_rad, t.soft_rad, t.usable_rad);
  };
  return a.axis == b.axis && limits(a.travel) == limits(b.travel) && a.marks == b.marks;
}

double on_grid(double angle_rad, double step_rad) {
  return std::round(angle_rad / step_rad) * step_rad;
}

}  // namespace

TravelDial::TravelDial(Axis axis, QWidget* parent)
    : QWidget(parent), theme_(theme_for(ThemeKind::light)) {
  picture_.axis = axis;
  setObjectName(QString::fromUtf8(name_of(axis)) + QStringLiteral(" travel dial"));
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAccessibleName(tr("%1 travel").arg(axis_word(axis)));
  describe();
}

void TravelDial::setPicture(const DialPicture& picture) {
  if (is_same_but_for_hand(picture, picture_)) return;
  const double hand = picture_.angle_rad;
  picture_ = picture;
  picture_.angle_rad = hand;
  if (chosen_ && !picture_.mark(*chosen_)) chosen_.reset();
  if (hovered_ && !picture_.mark(*hovered_)) hovered_.reset();
  describe();
  paintAgain();
}

void TravelDial::setHand(double angle_rad) {
  picture_.angle_rad = angle_rad;
  paintAgain();
}

void TravelDial::setTheme(const Theme& theme) {
  theme_ = theme;
  paintAgain();
}

DialLayout TravelDial::dialLayout() const {
  return dial_layout(rect(), QFontMetricsF(font()), picture_);
}

const TravelMark* TravelDial::activeMark() const {
  if (drag_) return picture_.mark(drag_->mark);
  if (hovered_) return picture_.mark(*hovered_);
  return chosen_ && hasFocus() ? picture_.mark(*chosen_) : nullptr;
}

QString TravelDial::tip(const TravelMark& mark) const {
  const std::string path = field_of(picture_, mark);
  const FieldInfo* info = find_info(path);
  const QString field = info ? mid_sentence(worded(info->label)) : tr("routing");
  QString text =
      tr("%1 %2 at %3.")
          .arg(axis_word(picture_.axis), mark_long_word(mark), dial_angle_text(mark.angle_rad, 6));
  text += QChar(' ') + (mark.moves ? tr("Drag it, or use the arrow keys, to change the %1.")
                                   : tr("It follows from the %1 and the card's measures."))
                           .arg(field);
  if (mark.kind == MarkKind::hard_stop) text += QChar(' ') + tr("With Shift only this side moves.");
  return text + QChar(' ') + tr("Double-click to type.");
}

void TravelDial::describe() {
  QString text = dial_summary(picture_);
  const TravelMark* active = activeMark();
  if (active) {
    text = tr("%1 %2").arg(mark_long_word(*active), dial_angle_text(active->angle_rad, 4)) +
           QStringLiteral(". ") + text;
  }
  if (text != accessibleDescription()) setAccessibleDescription(text);
}

void TravelDial::choose(const std::optional<TravelMark>& mark) {
  chosen_ = mark;
  key_run_ = false;
  describe();
  paintAgain();
}

void TravelDial::chooseNext(int by) {
  const int count = int(picture_.marks.size());
  if (count == 0) return;
  int at = by > 0 ? -1 : count;
  for (int i = 0; chosen_ && i < count; ++i) {
    if (picture_.marks[std::size_t(i)].is_same_as(*chosen_)) at = i;
  }
  hovered_.reset();
  choose(picture_.marks[std::size_t((at + by + count) % count)]);
}

void TravelDial::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  const DialLayout layout = dialLayout();
  const auto mark = mark_at(layout, picture_, event->position());
  choose(mark);
  if (!mark || !mark->moves) return;
  drag_ = Drag{*mark, layout.angle_at(event->position()), mark->angle_rad, mark->angle_rad};
  setCursor(Qt::ClosedHandCursor);
  emit dragStarted();
}

void TravelDial::mouseMoveEvent(QMouseEvent* event) {
  if (!drag_) return hover(event->position());
  const double pointer = dialLayout().angle_at(event->position());
  drag_->wanted_rad += std::remainder(pointer - drag_->pointer_rad, 2 * kPi);
  drag_->pointer_rad = pointer;
  const double angle = on_grid(drag_->wanted_rad, kDragStep_rad);
  if (angle == drag_->sent_rad) return;
  drag_->sent_rad = angle;
  const bool continues = std::exchange(drag_->moved, true);
  emit moved({axis(), drag_->mark, angle, bool(event->modifiers() & Qt::ShiftModifier), continues});
}

void TravelDial::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) endDrag();
}

void TravelDial::endDrag() {
  if (!drag_) return;
  drag_.reset();
  setCursor(hovered_ ? Qt::OpenHandCursor : Qt::ArrowCursor);
  paintAgain();
  emit dragEnded();
}

void TravelDial::mouseDoubleClickEvent(QMouseEvent* event) {
  endDrag();
  const auto mark = mark_at(dialLayout(), picture_, event->position());
  if (mark) emit fieldChosen(QString::fromStdString(field_of(picture_, *mark)));
}

void TravelDial::hover(QPointF point) {
  const auto mark = mark_at(dialLayout(), picture_, point);
  if (mark == hovered_) return;
  hovered_ = mark;
  setCursor(!mark ? Qt::ArrowCursor : mark->moves ? Qt::OpenHandCursor : Qt::PointingHandCursor);
  describe();
  paintAgain();
}

void TravelDial::leaveEvent(QEvent*) {
  if (drag_) return;
  hovered_.reset();
  unsetCursor();
  describe();
  paintAgain();
}

void TravelDial::step(double by_rad) {
  const TravelMark* mark = chosen_ ? picture_.mark(*chosen_) : nullptr;
  if (!mark) return chooseNext(1);
  if (!mark->moves) return;
  hovered_.reset();
  emit moved({axis(), *mark, mark->angle_rad + by_rad, false, std::exchange(key_run_, true)});
}

/// Both dials count counter-clockwise: Left and Up turn a mark that way.
void TravelDial::keyPressEvent(QKeyEvent* event) {
  const double by = (event->modifiers() & Qt::ShiftModifier ? 0.1 : 1) * kDegree_rad;
  switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Up:
      return drag_ ? void() : step(by);
    case Qt::Key_Right:
    case Qt::Key_Down:
      return drag_ ? void() : step(-by);
    case Qt::Key_PageDown:
    case Qt::Key_Space:
      return drag_ ? void() : chooseNext(1);
    case Qt::Key_PageUp:
      return drag_ ? void() : chooseNext(-1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (const TravelMark* mark = activeMark()) {
        emit fieldChosen(QString::fromStdString(field_of(picture_, *mark)));
      }
      return;
    case Qt::Key_Escape:
      if (!drag_) break;
      emit takenBack();
      return endDrag();
    default:
      break;
  }
  QWidget::keyPressEvent(event);
}

void TravelDial::focusInEvent(QFocusEvent* event) {
  if (!chosen_ && event->reason() != Qt::MouseFocusReason) chooseNext(1);
  kept_.forget();
  QWidget::focusInEvent(event);
}

void TravelDial::focusOutEvent(QFocusEvent* event) {
  key_run_ = false;
  kept_.forget();
  describe();
  QWidget::focusOutEvent(event);
}

bool TravelDial::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto mark = mark_at(dialLayout(), picture_, help->pos());
    const QString text = mark ? tip(*mark)
                              : dial_summary(picture_) + QStringLiteral(". ") +
                                    tr("Drag a mark, or use the arrow and Page keys.");
    QToolTip::showText(help->globalPos(), text, this);
    return true;
  }
  return QWidget::event(event);
}

void TravelDial::paintAgain() {
  kept_.forget();
  update();
}

void TravelDial::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.drawPixmap(0, 0, kept_.of(*this, theme_.card, [this](QPainter& picture) {
    DialPicture shown = picture_;
    if (const TravelMark* active = activeMark()) shown.active = *active;
    paint_travel_dial(picture, rect(), shown, theme_);
  }));
  if (hasFocus()) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(theme_.focus, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 5, 5);
  }
}

}  // namespace gazewright
