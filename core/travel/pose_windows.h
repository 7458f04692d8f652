#pragma once

#include <optional>
#include <vector>

#include "core/rig/rig.h"

/// Which part of the sphere around the rig it can look at, from windows of poses.
namespace gazewright {

/// A window of pan by tilt. [rad]
struct PoseWindow {
  double pan_least_rad = 0, pan_most_rad = 0, tilt_least_rad = 0, tilt_most_rad = 0;

  bool is_empty() const { return pan_most_rad <= pan_least_rad || tilt_most_rad <= tilt_least_rad; }
};

/// A keep-out as a window; empty where an end is missing. It is a direction, so it counts again a
/// turn of pan further.
std::optional<PoseWindow> window_of(const KeepOut& keep_out);
/// Whether a pose is in it (its edge counts as outside).
bool is_inside(const PoseWindow& keep_out, double pan_rad, double tilt_rad);

/// The window less its keep-outs, as windows that do not overlap. Tilt is held within half a turn,
/// pan within one. Windows beyond straight up or down come back as the directions they look in:
/// half a turn of pan further.
std::vector<PoseWindow> looked_at(const PoseWindow& whole,
                                  const std::vector<PoseWindow>& keep_outs);

/// Share of the sphere that the camera's axis reaches, 0 to 1. Exact.
/// Source: area between two elevations, Δpan·(sin b − sin a) of 4π.
/// @param windows  from looked_at
double axis_share(const std::vector<PoseWindow>& windows);

/// Share of the sphere that is in the picture at some pose, 0 to 1; the picture is a rectangle of
/// these angles between opposite edges, through its middle. Rings of a
/// quarter degree are weighed at their middles, so the share is within about 1e-3.
double view_share(const std::vector<PoseWindow>& windows, double horizontal_rad,
                  double vertical_rad);

/// Angle between upper and lower edge of the picture, square pixels: 2·atan(tan(h/2)·rows/columns).
double vertical_view_rad(double horizontal_rad, double columns, double rows);

}  // namespace gazewright
