#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/analysis/analysis.h"
#include "core/analysis/swap.h"
#include "core/rig/fields.h"
#include "core/rig/rig.h"

/// Changes of a rig as pure functions: rig in, rig out. The window turns each into one undo step.
namespace gazewright {

Rig with_quantity(Rig rig, std::string_view path, const Quantity& quantity);
Rig with_choice(Rig rig, std::string_view path, const std::string& value);
Rig with_text(Rig rig, std::string_view path, const std::string& text);
/// A number in the unit that its field is written in already, source and spread dropped: the value
/// of a drag or a remedy is nobody's measurement.
Rig with_value(Rig rig, std::string_view path, double value_si);

Rig with_values(Rig rig, const std::vector<FieldValue>& values);

/// `part` is "pan.stops", "pan.cable", "tilt.stops" or "tilt.cable".
Presence presence_of(const Rig& rig, std::string_view part);
Rig with_presence(Rig rig, std::string_view part, Presence presence);

/// @pre the remedy has a path.
Rig with_remedy(const Rig& rig, const Remedy& remedy);

/// A body by its path, "on_pan[2]" or "on_tilt[0]".
struct BodyPlace {
  bool on_tilt = false;
  std::size_t index = 0;
  bool operator==(const BodyPlace&) const = default;
};
std::optional<BodyPlace> body_place(const Rig& rig, std::string_view path);
std::string path_of(const BodyPlace& place);
std::vector<Body>& bodies_in(Rig& rig, bool on_tilt);
const std::vector<Body>& bodies_in(const Rig& rig, bool on_tilt);

Rig with_new_body(Rig rig, bool on_tilt);
Rig with_body_doubled(Rig rig, const BodyPlace& place);
Rig with_body_removed(Rig rig, const BodyPlace& place);
/// Moves it by `steps` places among its neighbours; stays where there is no such place.
Rig with_body_moved(Rig rig, const BodyPlace& place, int steps);
Rig with_body_carried(Rig rig, const BodyPlace& place, bool on_tilt);  ///< goes to the list's end

/// Index of the alternative in Shape: ball, shell, tube, box, point, inertia.
Rig with_shape(Rig rig, const BodyPlace& place, std::size_t shape);

/// A keep-out to start from, above the rest pose.
Rig with_new_keep_out(Rig rig);
Rig with_keep_out_removed(Rig rig, std::size_t index);

Rig with_new_detector(Rig rig);
Rig with_detector_removed(Rig rig, std::size_t index);

/// A material of the rig's own to start from: the built-in one that the arm is of, or one without
/// values.
Rig with_new_material(Rig rig);
Rig with_material_removed(Rig rig, std::size_t index);
/// A move of the duty to start from, at the end of the list: to and fro by the task's move.
Rig with_new_duty_move(Rig rig);
Rig with_duty_move_removed(Rig rig, std::size_t index);
/// A path of two points to start from, which the target then follows; else one more point at this
/// place: half way between its neighbours, at the end a step further where the last one stands.
/// @pre place is at most the number of points.
Rig with_new_path_point(Rig rig, std::size_t place);
/// Of two points both go: one alone is no path.
Rig with_path_point_removed(Rig rig, std::size_t index);

/// A rig to begin with: everything that has no usual value is missing.
Rig blank_rig();

}  // namespace gazewright
