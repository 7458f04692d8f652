#include "app/plots/label_places.h"

#include <algorithm>

namespace gazewright {
namespace {

constexpr double kGap = 4;  // between a line and its label

}  // namespace

QRectF LabelPlaces::boxAt(QPointF at, QSizeF size, Qt::Alignment side) const {
  QRectF box(at, size);
  if (side & Qt::AlignRight) box.moveRight(at.x());
  if (side & Qt::AlignHCenter) box.moveLeft(at.x() - size.width() / 2);
  if (side & Qt::AlignBottom) box.moveBottom(at.y());
  if (side & Qt::AlignVCenter) box.moveTop(at.y() - size.height() / 2);
  box.moveLeft(std::clamp(box.left(), area_.left() + 1,
                          std::max(area_.left() + 1, area_.right() - size.width())));
  if (box.top() < area_.top()) box.moveTop(area_.top());
  return box;
}

bool LabelPlaces::isTaken(const QRectF& box) const {
  return std::any_of(taken_.begin(), taken_.end(),
                     [&box](const QRectF& other) { return other.intersects(box); });
}

int LabelPlaces::crossings(const QRectF& box) const {
  return int(std::count_if(uprights_.begin(), uprights_.end(),
                           [&box](double x) { return x > box.left() && x < box.right(); }));
}

QRectF LabelPlaces::place(QPointF at, QSizeF size, Qt::Alignment side) {
  return placeAbove(area_.bottom() + size.height() / 2, at, size, side);
}

QRectF LabelPlaces::placeAbove(double lowest, QPointF at, QSizeF size, Qt::Alignment side) {
  QRectF box = boxAt(at, size, side);
  double step = (side & Qt::AlignBottom) ? -size.height() : size.height();
  for (int tries = 0; tries < 8 && isTaken(box); ++tries) {
    box.translate(0, step);
    if (box.top() >= area_.top()) continue;
    step = size.height();  // no room above: look below
    box.moveTop(area_.top());
  }
  if (isTaken(box) || box.bottom() > lowest) return {};
  taken_.append(box);
  return box;
}

bool LabelPlaces::take(const QRectF& box) {
  if (!area_.contains(box) || isTaken(box) || crossings(box) > 0) return false;
  taken_.append(box);
  return true;
}

QRectF LabelPlaces::placeBeside(double x, QSizeF size) {
  const QPointF right(x + kGap, area_.top() + 1), left(x - kGap, area_.top() + 1);
  const auto worth = [&](QPointF at, Qt::Alignment side, bool fits) {
    return (fits ? 0 : 100) + crossings(boxAt(at, size, side));
  };
  const int at_right = worth(right, Qt::AlignLeft, right.x() + size.width() < area_.right());
  const int at_left = worth(left, Qt::AlignRight, left.x() - size.width() > area_.left());
  const double lowest = std::max(area_.center().y(), right.y() + size.height());
  if (at_left < at_right) return placeAbove(lowest, left, size, Qt::AlignRight | Qt::AlignTop);
  return placeAbove(lowest, right, size, Qt::AlignLeft | Qt::AlignTop);
}

}  // namespace gazewright
