#pragma once

#include <Eigen/Geometry>
#include <QPainter>
#include <optional>
#include <vector>

#include "app/plots/theme.h"
#include "core/rig/rig.h"

/// The rig to scale, from its bodies. Letters as in design section 3: B stand, P pan, T tilt.
namespace gazewright {

/// side: seen from the right, camera to the right; front: seen from the front; top: from above,
/// camera to the right.
enum class View { side, front, top };
QString view_word(View view);

/// A body of the rig, as in its path: "on_tilt[1]".
struct BodyRef {
  bool on_tilt = false;
  std::size_t index = 0;
  QString path() const;
  bool operator==(const BodyRef&) const = default;
};

/// Where the drawing puts points. It does not depend on the angles, so that a turning rig does not
/// make the picture jump.
struct Projection {
  View view = View::side;
  double px_per_m = 0;
  QPointF origin;  ///< of B on the page
  Eigen::Vector3d right = Eigen::Vector3d::UnitX(), up = Eigen::Vector3d::UnitZ();  ///< in B
  double pan_rad = 0, tilt_rad = 0;                        ///< of the pose, finite
  Eigen::Isometry3d X_BP = Eigen::Isometry3d::Identity();  ///< pose of P in B
  Eigen::Isometry3d X_BT = Eigen::Isometry3d::Identity();  ///< pose of T in B

  QPointF page(const Eigen::Vector3d& p_B_m) const;
  QPointF page(const BodyRef& carrier, const Eigen::Vector3d& p_m) const;
  /// The move in P or T that a move on the page stands for, within the plane of the page; for
  /// dragging a body. [m]
  Eigen::Vector3d carrier_move_m(const BodyRef& carrier, const QPointF& move_px) const;
};
/// Missing positions count as the axis (they are named under the drawing).
Projection drawing_projection(const QRectF& rect, const Rig& rig, View view, double pan_rad,
                              double tilt_rad);
/// The same to another scale, in the middle of the same page.
Projection scaled_to(Projection projection, const QRectF& rect, double px_per_m);

/// One view with its place on the page.
struct DrawnView {
  QRectF rect;
  Projection projection;
  bool is_one_of_more = false;  ///< then it says which, and its neighbours say the rest

  View view() const { return projection.view; }
};
/// Where in a view the dimensions of the tilt axis stand, from its left and its top. [px]
inline constexpr double kHeightDimensionX = 34, kOffsetDimensionY = 14;

/// The smallest page on which all three views can be read.
bool has_room_for_all_views(const QSizeF& page);
/// All three views to one scale, side by side or two by two, whichever gives the larger scale.
std::vector<DrawnView> all_views(const QRectF& page, const Rig& rig, double pan_rad,
                                 double tilt_rad);
DrawnView one_view(const QRectF& page, const Rig& rig, View view, double pan_rad, double tilt_rad);

/// Outlines of the bodies, hard stops, the cables' path, pan and tilt axis as dash-dot lines,
/// centre of mass of the tilt group with its distance, view cone of the camera, stand, height of
/// the tilt axis, scale bar. Where there is nothing to draw it says so.
void paint_drawing(QPainter& painter, const DrawnView& drawn, const Rig& rig, const Theme& theme,
                   const std::optional<BodyRef>& selected = {});
void paint_drawing(QPainter& painter, const QRectF& rect, const Rig& rig, View view, double pan_rad,
                   double tilt_rad, const Theme& theme,
                   const std::optional<BodyRef>& selected = {});

/// The body under a point of that drawing; the smallest wins. A body smaller than 24 px is hit
/// within 12 px of its centre.
std::optional<BodyRef> body_at(const QPointF& point, const Rig& rig, const Projection& projection);
std::optional<BodyRef> body_at(const QPointF& point, const QRectF& rect, const Rig& rig, View view,
                               double pan_rad, double tilt_rad);

}  // namespace gazewright
