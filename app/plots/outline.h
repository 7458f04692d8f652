#pragma once

#include <Eigen/Geometry>
#include <QPolygonF>
#include <optional>
#include <vector>

#include "app/plots/drawing.h"

namespace gazewright {

/// Points whose convex hull is the body's outline from any side, in its carrier's frame. [m] A
/// point or a bare tensor gives its centre only. Empty where a size or the place is missing.
std::vector<Eigen::Vector3d> outline_points_m(const Body& body);

bool has_outline(const Body& body);          ///< whether there are such points
Eigen::Vector3d centre_m(const Body& body);  ///< in its carrier's frame, NaN where missing

std::optional<double> sphere_radius_m(const Body& body);  ///< of a ball or shell

/// Convex hull, counter-clockwise. Source: Andrew's monotone chain, 1979.
QPolygonF convex_hull(std::vector<QPointF> points);

const std::vector<Body>& bodies_of(const Rig& rig, bool on_tilt);
const Body& body_of(const Rig& rig, const BodyRef& ref);
/// The body's outline on the page.
QPolygonF page_outline(const Projection& projection, const BodyRef& ref, const Body& body);

/// The bodies' places as numbers, 0 where missing. [m]
Eigen::Vector3d position_m(const std::array<Quantity, 3>& place);

}  // namespace gazewright
