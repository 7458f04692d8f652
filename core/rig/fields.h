#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/rig/rig.h"

/// The table of every field of a rig: key, label, dimension, unit, range, default and one sentence
/// of help. Files, cards, remedies and the sheet all read this table; a new input is one row here
/// and one member in rig.h.
namespace gazewright {

/// Facts about one quantity field. `unit` is what an entry without a history is shown and written
/// in, in UDUNITS-2 text with our aliases; `si_unit` is the unit of Quantity::si.
struct FieldInfo {
  std::string_view key;                         ///< as in the rig file, e.g. "rotor_inertia"
  std::string_view label;                       ///< as on screen, e.g. "Rotor inertia"
  std::string_view si_unit;                     ///< e.g. "kg.m2"; "1" for a plain number
  std::string_view unit;                        ///< e.g. "g.cm2"
  double least = -kInfinity, most = kInfinity;  ///< allowed range, SI, inclusive
  bool above_least = false;                     ///< true: `least` itself is not allowed
  bool may_be_none = false;                     ///< `none` is a value: no such limit (+infinity)
  bool whole = false;                           ///< only whole numbers
  bool detail = false;  ///< for a closer look: figures that lack only such fields are left aside
  std::optional<double>
      fallback;  ///< documented default, SI; empty: missing makes its figures unknown
  std::string_view fallback_text;  ///< how the default is said where it is not a constant, e.g. "2
                                   ///< - 1/efficiency"
  std::string_view help;           ///< meaning, typical range, where to find it

  bool is_torque() const { return si_unit == "N.m"; }
  bool is_plain_number() const { return si_unit == "1"; }
};

struct ChoiceInfo {
  std::string_view key, label;
  std::span<const std::string_view> options;  ///< the first is the default
  std::string_view help;
};

struct TextInfo {
  std::string_view key, label, help;
};

/// One field as found in a rig, with its full path ("pan.motor.rotor_inertia",
/// "on_tilt[1].shape.box[0]").
struct QuantityRef {
  std::string path;
  const FieldInfo* info;
  Quantity* quantity;
};
struct ChoiceRef {
  std::string path;
  const ChoiceInfo* info;
  Choice* choice;
};
struct TextRef {
  std::string path;
  const TextInfo* info;
  std::string* text;
};
using FieldRef = std::variant<QuantityRef, ChoiceRef, TextRef>;

/// Tables by part, in the order of the file.
template <class Part>
struct QuantityRow {
  FieldInfo info;
  Quantity Part::*at;
};
template <class Part>
struct ChoiceRow {
  ChoiceInfo info;
  Choice Part::*at;
};
template <class Part>
struct TextRow {
  TextInfo info;
  std::string Part::*at;
};
template <class Part>
struct PartTable {
  std::span<const TextRow<Part>> texts;
  std::span<const QuantityRow<Part>> quantities;
  std::span<const ChoiceRow<Part>> choices;
};
/// Specialised for Supply, Surroundings, Stand, Motor, Drive, Gearbox, Encoder, Friction, Stops,
/// Cable, Homing, Loop, Bracket, Bearing, Joint, Balance, Arm, Camera, Task, Tracking, Detector,
/// Pointing, DutyMove, Material, Ball, Shell, Tube.
template <class Part>
const PartTable<Part>& table_of();
template <>
const PartTable<Supply>& table_of<Supply>();
template <>
const PartTable<Surroundings>& table_of<Surroundings>();
template <>
const PartTable<Stand>& table_of<Stand>();
template <>
const PartTable<Motor>& table_of<Motor>();
template <>
const PartTable<Drive>& table_of<Drive>();
template <>
const PartTable<Gearbox>& table_of<Gearbox>();
template <>
const PartTable<Encoder>& table_of<Encoder>();
template <>
const PartTable<Friction>& table_of<Friction>();
template <>
const PartTable<Stops>& table_of<Stops>();
template <>
const PartTable<Cable>& table_of<Cable>();
template <>
const PartTable<Homing>& table_of<Homing>();
template <>
const PartTable<Loop>& table_of<Loop>();
template <>
const PartTable<Bracket>& table_of<Bracket>();
template <>
const PartTable<Bearing>& table_of<Bearing>();
template <>
const PartTable<Joint>& table_of<Joint>();
template <>
const PartTable<Balance>& table_of<Balance>();
template <>
const PartTable<Arm>& table_of<Arm>();
template <>
const PartTable<Pointing>& table_of<Pointing>();
template <>
const PartTable<DutyMove>& table_of<DutyMove>();
template <>
const PartTable<Material>& table_of<Material>();
template <>
const PartTable<Camera>& table_of<Camera>();
template <>
const PartTable<Task>& table_of<Task>();
template <>
const PartTable<Tracking>& table_of<Tracking>();
template <>
const PartTable<Detector>& table_of<Detector>();
template <>
const PartTable<Ball>& table_of<Ball>();
template <>
const PartTable<Shell>& table_of<Shell>();
template <>
const PartTable<Tube>& table_of<Tube>();

/// Fields that stand alone or in arrays.
const FieldInfo& axis_at_info();  ///< one coordinate of tilt.axis_at
const FieldInfo& body_mass_info();
const FieldInfo& body_centre_info();  ///< one coordinate of a body's centre
const FieldInfo& box_side_info();
const FieldInfo& tensor_diagonal_info();
const FieldInfo& tensor_product_info();
const FieldInfo& keep_out_pan_info();  ///< one end of a keep-out
const FieldInfo& keep_out_tilt_info();
/// Time, pan and tilt of a point of tracking.path, which is no field of its own: points come as a
/// whole path.
const std::array<const FieldInfo*, 3>& path_point_infos();

/// Every field of the rig in the order of the file; stops and cable only where they are given.
std::vector<FieldRef> all_fields(Rig& rig);
/// Every field whose path is `prefix` or begins with `prefix` and a dot or bracket.
std::vector<FieldRef> fields_under(Rig& rig, std::string_view prefix);
const std::string& path_of(const FieldRef& field);

/// The quantity at a path, or null where there is none.
Quantity* find_quantity(Rig& rig, std::string_view path);
const Quantity* find_quantity(const Rig& rig, std::string_view path);
const FieldInfo* find_info(std::string_view path);

/// The rig with every missing quantity that has a documented default filled in (source
/// `by_default`). analyse() works on this; files and windows keep the rig as the user wrote it.
/// back_efficiency becomes 2 - 1/efficiency (never below 0).
Rig with_defaults(const Rig& rig);

/// Why a value is not allowed in a field ("-2 is below the least allowed, 0"), or empty where it
/// is. Says the range in the field's unit.
std::string range_problem(const FieldInfo& info, double value_si);

}  // namespace gazewright
