#include "app/plots/drawing_routes.h"

#include <algorithm>
#include <cmath>

#include "app/plots/outline.h"
#include "core/units/angle.h"

namespace gazewright {
namespace {

using Eigen::Isometry3d;
using Eigen::Vector3d;

// Usual sizes for what the rig does not say.
constexpr double kStopTall_m = 0.008, kStopThick_m = 0.005, kRing_m = 0.009, kRingsLong_m = 0.024,
                 kUsualLength_m = 0.08, kHub_m = 0.012, kWall_m = 0.026, kAnchor_m = 0.03;
constexpr int kMostStrands = 6, kMostTurns = 12, kPerTurn = 32, kPerStrand = 24;

double or_usual(const Quantity& quantity, double usual) {
  const double value = quantity.si.value_or(usual);
  return std::isfinite(value) ? value : usual;
}

/// y in P of the longest upright body beside the tilt axis: the arm that carries it.
double arm_side_m(const Rig& rig) {
  double longest = 0, side = 0;
  for (const Body& body : rig.on_pan) {
    double low = kInfinity, high = -kInfinity;
    for (const Vector3d& p : outline_points_m(body)) {
      low = std::min(low, p.z());
      high = std::max(high, p.z());
    }
    if (high - low <= longest) continue;
    longest = high - low;
    side = centre_m(body).y();
  }
  return side;
}

StopBlock block(const AxisFrame& frame, double radius, double angle, double wide, double tall,
                bool turns) {
  StopBlock made{{}, turns};
  const double half = std::asin(std::clamp(wide / (2 * radius), 0.0, 1.0));
  for (const double r : {radius - kStopThick_m / 2, radius + kStopThick_m / 2}) {
    for (const double side : {-half, half}) {
      for (const double s : {0.0, tall})
        made.corners_m.push_back(frame.at(r, angle + side, frame.station_m + s));
    }
  }
  return made;
}

/// How far along the axis a length of cable reaches to either side of its middle.
struct Stretch {
  double from_m, to_m;
};
Stretch twist_stretch(const Rig& full, const AxisFrame& frame, Axis axis, double length) {
  if (axis == Axis::pan) {
    const double top =
        std::min(length / 2, 0.8 * std::max(0.0, position_m(full.tilt_axis_at_m).z()));
    return {top - length, top};
  }
  const double inward = frame.station_m > 0 ? -1 : 1;
  return {frame.station_m, frame.station_m + inward * length};
}

std::vector<Strand> twisted(const Rig& full, const AxisFrame& frame, Axis axis,
                            const Cable& cable) {
  const Stretch stretch =
      twist_stretch(full, frame, axis, or_usual(cable.free_length_m, kUsualLength_m));
  const double lay = or_usual(cable.lay_radius_m, 0);
  const int count = std::clamp(int(or_usual(cable.count, 1)), 1, kMostStrands);
  std::vector<Strand> strands(std::size_t(lay > 0 ? count : 1));
  for (std::size_t i = 0; i < strands.size(); ++i) {
    const double phase = 2 * kPi * double(i) / double(strands.size());
    for (int k = 0; k <= kPerStrand; ++k) {
      const double part = double(k) / kPerStrand;
      strands[i].push_back(frame.at(lay, phase + part * frame.turn_rad,
                                    std::lerp(stretch.from_m, stretch.to_m, part)));
    }
  }
  return strands;
}

Strand coiled(const AxisFrame& frame, const Cable& cable) {
  const double hub = or_usual(cable.hub_radius_m, kHub_m);
  const double wall = std::max(hub, or_usual(cable.wall_radius_m, kWall_m));
  const double length = or_usual(cable.free_length_m, 4 * kPi * (hub + wall) / 2);
  const double turns = std::clamp(length / (kPi * (hub + wall)) + frame.turn_rad / (2 * kPi), 0.25,
                                  double(kMostTurns));
  // The end on the hub turns with the axis, whatever number of turns is drawn.
  const double sweep = 2 * kPi * turns;
  Strand spiral;
  const int points = std::max(8, int(turns * kPerTurn));
  for (int k = 0; k <= points; ++k) {
    const double part = double(k) / points;
    spiral.push_back(frame.at(std::lerp(wall, hub, part), kPi + part * sweep, frame.station_m));
  }
  return spiral;
}

double length_of(const Strand& strand) {
  double sum = 0;
  for (std::size_t i = 1; i < strand.size(); ++i) sum += (strand[i] - strand[i - 1]).norm();
  return sum;
}

Strand parabola(const Vector3d& a, const Vector3d& b, const Vector3d& down, double sag) {
  Strand bend;
  for (int k = 0; k <= kPerStrand; ++k) {
    const double part = double(k) / kPerStrand;
    bend.push_back(a + part * (b - a) + 4 * sag * part * (1 - part) * down);
  }
  return bend;
}

Strand hanging(const AxisFrame& frame, Axis axis, const Cable& cable) {
  const double anchor = or_usual(cable.anchor_radius_m, kAnchor_m);
  const double moving = or_usual(cable.moving_radius_m, kHub_m);
  const double length = or_usual(cable.free_length_m, kUsualLength_m);
  const Vector3d a = frame.at(anchor, kPi, frame.station_m);
  const Vector3d b = frame.at(moving, kPi + frame.turn_rad, frame.station_m);
  const Vector3d down =
      frame.X_BF.linear() * (axis == Axis::pan ? Vector3d(-frame.along) : Vector3d(-frame.quarter));
  double low = 0, high = length;  // the sag that gives the free length
  for (int i = 0; i < 40; ++i) {
    const double middle = (low + high) / 2;
    (length_of(parabola(a, b, down, middle)) < length ? low : high) = middle;
  }
  return parabola(a, b, down, low);
}

std::vector<Strand> ringed(const AxisFrame& frame) {
  std::vector<Strand> rings;
  for (int ring = 0; ring < 4; ++ring) {
    Strand circle;
    for (int k = 0; k <= kPerStrand; ++k) {
      circle.push_back(
          frame.at(kRing_m, 2 * kPi * k / kPerStrand, frame.station_m - kRingsLong_m * ring / 3));
    }
    rings.push_back(std::move(circle));
  }
  return rings;
}

}  // namespace

Vector3d AxisFrame::at(double radius_m, double angle_rad, double s_m) const {
  return X_BF * Vector3d(radius_m * std::cos(angle_rad) * zero +
                         radius_m * std::sin(angle_rad) * quarter + s_m * along);
}

AxisFrame axis_frame(const Rig& full, const Projection& projection, Axis axis) {
  AxisFrame frame;
  if (axis == Axis::pan) {
    frame.zero = Vector3d::UnitX();
    frame.quarter = Vector3d::UnitY();
    frame.along = Vector3d::UnitZ();
    frame.turn_rad = projection.pan_rad;
    return frame;
  }
  frame.X_BF = projection.X_BP;
  frame.X_BF.translate(position_m(full.tilt_axis_at_m));
  frame.zero = Vector3d::UnitX();
  frame.quarter = Vector3d::UnitZ();  // positive tilt looks up
  frame.along = -Vector3d::UnitY();
  frame.turn_rad = projection.tilt_rad;
  frame.station_m = position_m(full.tilt_axis_at_m).y() - arm_side_m(full);
  return frame;
}

std::vector<StopBlock> stop_blocks(const Rig& full, const Projection& projection, Axis axis) {
  const Stops& stops = full.axis(axis).stops;
  const auto& radius = stops.radius_m.si;
  if (stops.presence != Presence::given || !radius || !(*radius > 0)) return {};
  const AxisFrame frame = axis_frame(full, projection, axis);
  const double tall = or_usual(stops.tab_height_m, kStopTall_m);
  const double centre = stops.centre_rad.si.value_or(0);
  const double tab = or_usual(stops.tab_width_m, kStopThick_m);
  std::vector<StopBlock> blocks{block(frame, *radius, frame.turn_rad, tab, tall, true)};
  if (stops.kind.value == "window") {
    const auto& window = stops.window_rad.si;
    if (!window) return {};
    const double half_post = std::asin(std::min(1.0, kStopThick_m / (2 * *radius)));
    for (const double side : {-1.0, 1.0}) {
      blocks.push_back(block(frame, *radius, centre + side * (*window / 2 + half_post),
                             kStopThick_m, tall, false));
    }
    return blocks;
  }
  const double post = centre + kPi;
  blocks.push_back(
      block(frame, *radius, post, or_usual(stops.post_width_m, kStopThick_m), tall, false));
  if (stops.kind.value == "trailing") {
    const int count = std::clamp(int(or_usual(stops.trailers, 1)), 1, 20);
    for (int i = 1; i <= count; ++i) {  // somewhere between the tab and the post
      const double angle = std::lerp(frame.turn_rad, post, double(i) / (count + 1));
      blocks.push_back(
          block(frame, *radius, angle, or_usual(stops.trailer_width_m, tab), tall, true));
    }
  }
  return blocks;
}

Strand stop_circle_m(const Rig& full, const Projection& projection, Axis axis) {
  const Stops& stops = full.axis(axis).stops;
  Strand circle;
  if (stops.presence != Presence::given || !stops.radius_m.si) return circle;
  const AxisFrame frame = axis_frame(full, projection, axis);
  for (int k = 0; k <= 48; ++k)
    circle.push_back(frame.at(*stops.radius_m.si, 2 * kPi * k / 48, frame.station_m));
  return circle;
}

std::vector<Strand> cable_strands(const Rig& full, const Projection& projection, Axis axis) {
  const Cable& cable = full.axis(axis).cable;
  if (cable.presence != Presence::given) return {};
  const AxisFrame frame = axis_frame(full, projection, axis);
  switch (routing_of(cable)) {
    case Routing::coil:
      return {coiled(frame, cable)};
    case Routing::loop:
      return {hanging(frame, axis, cable)};
    case Routing::slip_ring:
      return ringed(frame);
    case Routing::twist:
      break;
  }
  return twisted(full, frame, axis, cable);
}

Strand cable_between(const Rig& full, const Projection& projection) {
  const Cable& pan = full.pan.cable;
  if (pan.presence != Presence::given) return {};
  const Vector3d axis = position_m(full.tilt_axis_at_m);
  const double side = arm_side_m(full);
  double start = 0;
  if (routing_of(pan) == Routing::twist) {
    start = twist_stretch(full, axis_frame(full, projection, Axis::pan), Axis::pan,
                          or_usual(pan.free_length_m, kUsualLength_m))
                .to_m;
  }
  Strand way{{0, 0, start}, {0, side, start}, {axis.x(), side, axis.z()}};
  for (Vector3d& point : way) point = projection.X_BP * point;
  return way;
}

}  // namespace gazewright
