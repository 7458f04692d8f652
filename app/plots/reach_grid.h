#pragma once

#include <QPointF>
#include <QRectF>

#include "app/plots/chart.h"
#include "core/analysis/reach.h"

namespace gazewright {

/// A rectangle of poses with the same limit, as indices of the map's grid, ends included.
struct ReachPatch {
  PoseLimit limit = PoseLimit::none;
  std::size_t pan_first = 0, pan_last = 0, tilt_first = 0, tilt_last = 0;
};
/// The whole map as such rectangles, none over another.
std::vector<ReachPatch> patches_of(const ReachMap& map);

/// Between poses and points of the page: pan across, tilt up.
class ReachGrid {
 public:
  /// @pre the map is not empty.
  ReachGrid(const QRectF& inside, const ReachMap& map);

  double x(double pan_rad) const;
  double y(double tilt_rad) const;
  QRectF window(const PoseWindow& window) const;
  QRectF patch(const ReachMap& map, const ReachPatch& patch) const;
  double pan_rad(double x) const;  ///< of a point inside
  double tilt_rad(double y) const;

  const QRectF& inside() const { return inside_; }
  const Range& pan() const { return pan_; }  ///< shown, in radians
  const Range& tilt() const { return tilt_; }

 private:
  QRectF inside_;
  Range pan_, tilt_;
  double half_rad_ = 0;  ///< of a step
};

}  // namespace gazewright
