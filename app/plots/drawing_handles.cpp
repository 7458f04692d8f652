#include "app/plots/drawing_handles.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "app/plots/outline.h"
#include "core/rig/fields.h"

namespace gazewright {
namespace {

using Eigen::Vector3d;
constexpr double kMillimetre_m = 1e-3, kMicrometre_m = 1e-6;
constexpr double kLeastSlope = 0.35;  // of a coordinate's length that the page has to show
constexpr double kLeastRim = 17;      // pixels from the centre, so that both can be hit

/// The diameter of a round shape, and what it must leave room for.
struct Round {
  const Quantity* diameter_m = nullptr;
  double least_m = kMillimetre_m;
  const char* key = "";
};
std::optional<Round> round_of(const Shape& shape) {
  if (const auto* ball = std::get_if<Ball>(&shape))
    return Round{&ball->diameter_m, kMillimetre_m, "ball"};
  if (const auto* shell = std::get_if<Shell>(&shape)) {
    return Round{&shell->diameter_m, 2 * shell->wall_m.si.value_or(0) + kMillimetre_m, "shell"};
  }
  if (const auto* tube = std::get_if<Tube>(&shape))
    return Round{&tube->diameter_m, tube->bore_m.si.value_or(0) + kMillimetre_m, "tube"};
  return std::nullopt;
}

int index_along(const Tube& tube) {
  return tube.along.value == "y" ? 1 : tube.along.value == "z" ? 2 : 0;
}

/// From the centre to the rim on the page: up and to the left, of a tube square to its length.
QPointF rim_direction(const Body& body, const BodyRef& ref, const Projection& projection) {
  const QPointF slanting(-M_SQRT1_2, -M_SQRT1_2);
  const auto* tube = std::get_if<Tube>(&body.shape);
  if (!tube) return slanting;
  Vector3d along = Vector3d::Zero();
  along[index_along(*tube)] = 1;
  const QPointF shown = projection.page(ref, along) - projection.page(ref, Vector3d::Zero());
  const double length = std::hypot(shown.x(), shown.y());
  if (length < 0.2 * projection.px_per_m) return slanting;
  const QPointF square(shown.y() / length, -shown.x() / length);
  const bool is_upward = square.y() < -1e-9 || (std::abs(square.y()) <= 1e-9 && square.x() < 0);
  return is_upward ? square : -square;
}

/// Coordinates of tilt.axis_at as directions on the page. [px/m]
QPointF axis_slope(const Projection& projection, int coordinate) {
  Vector3d step = Vector3d::Zero();
  step[coordinate] = 1;
  return projection.page(projection.X_BP * step) - projection.page(Vector3d::Zero());
}

/// Which coordinate the view shows best across or up the page, if one is shown well.
std::optional<int> axis_coordinate(const Projection& projection, bool across) {
  std::optional<int> best;
  double most = kLeastSlope * projection.px_per_m;
  for (int i = 0; i < 3; ++i) {
    const QPointF slope = axis_slope(projection, i);
    const double shown = std::abs(across ? slope.x() : slope.y());
    if (shown <= most) continue;
    most = shown;
    best = i;
  }
  return best;
}
bool is_axis(const DrawingHandle& handle) { return !handle.has_body(); }
std::optional<int> axis_coordinate(const DrawnView& drawn, const DrawingHandle& handle) {
  return axis_coordinate(drawn.projection, handle.kind == HandleKind::axis_across);
}

double rounded(double value_m, double move_m, bool whole_mm) {
  const double moved = value_m + move_m;
  if (whole_mm && std::abs(move_m) < kMillimetre_m / 2) return value_m;
  const double step = whole_mm ? kMillimetre_m : kMicrometre_m;
  return std::round(moved / step) * step + 0.0;
}

FieldValue within_range(std::string path, double value) {
  if (const FieldInfo* info = find_info(path)) value = std::clamp(value, info->least, info->most);
  return {std::move(path), value};
}

std::string centre_path(const BodyRef& body, int coordinate) {
  return body.path().toStdString() + ".centre[" + std::to_string(coordinate) + "]";
}

std::vector<FieldValue> body_values(const Rig& from, const DrawnView& drawn,
                                    const DrawingHandle& handle, const QPointF& move_px,
                                    bool whole_mm) {
  const Vector3d centre = centre_m(body_of(from, handle.body));
  const Vector3d move = drawn.projection.carrier_move_m(handle.body, move_px);
  std::vector<FieldValue> values;
  for (int i = 0; i < 3; ++i) {
    if (std::abs(move[i]) < kMicrometre_m / 2) continue;
    values.push_back(
        within_range(centre_path(handle.body, i), rounded(centre[i], move[i], whole_mm)));
  }
  return values;
}

void add_axis_handles(const DrawnView& drawn, std::vector<DrawingHandle>& handles) {
  const QPointF at = drawn.projection.page(drawn.projection.X_BT.translation());
  if (axis_coordinate(drawn.projection, false)) {
    handles.push_back(
        {HandleKind::axis_up, {}, drawn.view(), {drawn.rect.left() + kHeightDimensionX, at.y()}});
  }
  if (axis_coordinate(drawn.projection, true)) {
    handles.push_back({HandleKind::axis_across,
                       {},
                       drawn.view(),
                       {at.x(), drawn.rect.top() + kOffsetDimensionY}});
  }
}

}  // namespace

std::vector<DrawingHandle> drawing_handles(const Rig& rig, const DrawnView& drawn) {
  std::vector<DrawingHandle> handles;
  const bool is_placed = std::ranges::all_of(rig.tilt_axis_at_m, &Quantity::has_value);
  if (is_placed) add_axis_handles(drawn, handles);
  for (const bool on_tilt : {true, false}) {
    for (std::size_t i = 0; i < bodies_of(rig, on_tilt).size(); ++i) {
      const BodyRef ref{on_tilt, i};
      const Body& body = body_of(rig, ref);
      const Vector3d centre = centre_m(body);
      if (!centre.allFinite()) continue;
      const QPointF at = drawn.projection.page(ref, centre);
      handles.push_back({HandleKind::body, ref, drawn.view(), at});
      const auto round = round_of(body.shape);
      if (!round || !round->diameter_m->has_value()) continue;
      const double radius = round->diameter_m->value() / 2 * drawn.projection.px_per_m;
      handles.push_back(
          {HandleKind::diameter, ref, drawn.view(),
           at + std::max(kLeastRim, radius) * rim_direction(body, ref, drawn.projection)});
    }
  }
  return handles;
}

std::optional<QPointF> handle_slope(const Rig& rig, const DrawnView& drawn,
                                    const DrawingHandle& handle) {
  if (is_axis(handle)) {
    const auto coordinate = axis_coordinate(drawn, handle);
    if (!coordinate) return std::nullopt;
    return axis_slope(drawn.projection, *coordinate);
  }
  if (handle.kind == HandleKind::body) return std::nullopt;
  return rim_direction(body_of(rig, handle.body), handle.body, drawn.projection) *
         drawn.projection.px_per_m / 2;
}

std::vector<FieldValue> handle_values(const Rig& from, const DrawnView& drawn,
                                      const DrawingHandle& handle, const QPointF& move_px,
                                      bool whole_mm) {
  if (handle.kind == HandleKind::body) return body_values(from, drawn, handle, move_px, whole_mm);
  const auto slope = handle_slope(from, drawn, handle);
  if (!slope) return {};
  const double move = QPointF::dotProduct(move_px, *slope) / QPointF::dotProduct(*slope, *slope);
  const std::string path = handle_field(from, drawn, handle);
  const Quantity* before = find_quantity(from, path);
  if (!before || !before->si) return {};
  double value = rounded(*before->si, move, whole_mm);
  if (handle.kind == HandleKind::diameter) {
    value = std::max(value, round_of(body_of(from, handle.body).shape)->least_m);
  }
  return {within_range(path, value)};
}

std::string handle_field(const Rig& rig, const DrawnView& drawn, const DrawingHandle& handle) {
  if (is_axis(handle)) {
    return "tilt.axis_at[" + std::to_string(axis_coordinate(drawn, handle).value_or(2)) + "]";
  }
  if (handle.kind == HandleKind::body) return centre_path(handle.body, 0);
  const auto round = round_of(body_of(rig, handle.body).shape);
  return handle.body.path().toStdString() + ".shape." + (round ? round->key : "ball") + ".diameter";
}

std::vector<QPolygonF> outlines_moved_by(const Rig& rig, const Projection& projection,
                                         const DrawingHandle& handle) {
  if (handle.has_body()) return {page_outline(projection, handle.body, body_of(rig, handle.body))};
  std::vector<QPolygonF> outlines;
  for (std::size_t i = 0; i < rig.on_tilt.size(); ++i)
    outlines.push_back(page_outline(projection, {true, i}, rig.on_tilt[i]));
  return outlines;
}

}  // namespace gazewright
