#pragma once

#include <QRectF>
#include <QVector>

namespace gazewright {

/// Where the labels of a chart go, so that none lies over another. In pixels.
class LabelPlaces {
 public:
  /// @param area  no label leaves it
  explicit LabelPlaces(const QRectF& area) : area_(area) {}

  /// An upright line over the whole height, which a label had better not lie on.
  void addUpright(double x) { uprights_.append(x); }

  /// The box of a label that hangs at `at` by its `side`, moved down (or up) line by line until it
  /// lies free. It is taken from then on. Empty where there is no room: what it says stands in the
  /// plot's readings too.
  QRectF place(QPointF at, QSizeF size, Qt::Alignment side);
  /// The same for the label of an upright line: beside it, on the side where no other one passes
  /// through, the right one where both are alike. It stays in the upper half, so that many of them
  /// leave the curves of a low plot to be seen.
  QRectF placeBeside(double x, QSizeF size);

  /// Takes this box as it is; false where it is not free, an upright line passes through it or it
  /// is not whole in the area.
  bool take(const QRectF& box);

 private:
  /// Empty where it would reach below `lowest`.
  QRectF placeAbove(double lowest, QPointF at, QSizeF size, Qt::Alignment side);
  QRectF boxAt(QPointF at, QSizeF size, Qt::Alignment side) const;
  bool isTaken(const QRectF& box) const;
  int crossings(const QRectF& box) const;  ///< upright lines through it

  QRectF area_;
  QVector<QRectF> taken_;
  QVector<double> uprights_;
};

}  // namespace gazewright
