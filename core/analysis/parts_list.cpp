#include "core/analysis/parts_list.h"

#include <cmath>
#include <span>

#include "core/analysis/context.h"
#include "core/analysis/say.h"
#include "core/rig/fields.h"
#include "core/shelf/carried_parts.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

/// The figures of a part that tell it from others, as far as they are entered.
class Key {
 public:
  Key(const Rig& rig, std::optional<Axis> axis) : rig_(rig), axis_(axis) {}

  /// @param english  with a hole for the value: "%1 peak"
  Key& value(std::string_view path, std::string_view english = "%1") {
    const std::string at = axis_ ? for_axis(path, *axis_) : std::string(path);
    const Quantity* quantity = find_quantity(rig_, at);
    const FieldInfo* info = find_info(at);
    if (quantity != nullptr && info != nullptr && quantity->si && std::isfinite(*quantity->si))
      text(words(english, say(*quantity->si, info->si_unit, info->unit)));
    return *this;
  }
  Key& text(const std::string& text) {
    if (!text.empty()) text_ += (text_.empty() ? "" : ", ") + text;
    return *this;
  }
  std::string taken() const { return text_; }

 private:
  const Rig& rig_;
  std::optional<Axis> axis_;
  std::string text_;
};

void set_mass(PartLine& line, const Quantity& mass, const std::string& path) {
  line.mass_kg = mass.si;
  if (!mass.si) line.no_mass = say_needs(std::span(&path, 1));
}

void add_turning(const Rig& rig, Axis axis, std::vector<PartLine>& lines) {
  const AxisParts& parts = rig.axis(axis);
  const std::string name = name_of(axis);
  PartLine motor{"Motor", parts.motor.name, axis};
  motor.key = Key(rig, axis)
                  .value("<axis>.motor.speed_constant")
                  .value("<axis>.motor.phase_resistance")
                  .value("<axis>.motor.pole_pairs", "%1 pole pairs")
                  .value("<axis>.motor.peak_current", "peak %1")
                  .taken();
  set_mass(motor, parts.motor.mass_kg, name + ".motor.mass");
  PartLine drive{"Drive", {}, axis};
  drive.key = Key(rig, axis)
                  .value("<axis>.drive.current_limit")
                  .value("supply.voltage", "bus %1")
                  .value("<axis>.drive.control_rate")
                  .taken();
  PartLine gearbox{"Gearbox", parts.gearbox.name, axis};
  gearbox.key = Key(rig, axis)
                    .value("<axis>.gearbox.ratio", "%1 : 1")
                    .value("<axis>.gearbox.backlash", "gap %1")
                    .value("<axis>.gearbox.rated_torque", "rated %1")
                    .value("<axis>.gearbox.peak_torque", "peak %1")
                    .taken();
  set_mass(gearbox, parts.gearbox.mass_kg, name + ".gearbox.mass");
  PartLine encoder{"Encoder", {}, axis};
  encoder.key =
      Key(rig, axis)
          .text(parts.encoder.at.value == "output" ? words("at the output") : words("at the motor"))
          .value("<axis>.encoder.bits", "%1 bits")
          .value("<axis>.encoder.error", "error %1")
          .taken();
  for (PartLine* line : {&motor, &drive, &gearbox, &encoder}) lines.push_back(std::move(*line));
  if (parts.homing.by.value == "second_encoder") {
    PartLine second{"Second encoder", {}, axis};
    second.key =
        Key(rig, axis).value("<axis>.homing.second_ratio", "%1 turns an output turn").taken();
    lines.push_back(std::move(second));
  }
  if (parts.homing.by.value == "flag") lines.push_back({"Homing flag", {}, axis});
  if (parts.encoder.magnet_diameter_m.si) {
    PartLine magnet{"Encoder's magnet", {}, axis};
    magnet.key = Key(rig, axis)
                     .value("<axis>.encoder.magnet_diameter", "⌀ %1")
                     .value("<axis>.encoder.magnet_thickness", "thickness %1")
                     .taken();
    lines.push_back(std::move(magnet));
  }
}

void add_held(const Rig& rig, Axis axis, std::vector<PartLine>& lines) {
  const AxisParts& parts = rig.axis(axis);
  const std::string& kind = parts.bearing.kind.value;
  if (parts.bearing.dynamic_rating_N.si && kind != "gearbox") {
    PartLine bearing{"Bearing", {}, axis, kind == "single" ? 1.0 : 2.0};
    bearing.key = Key(rig, axis)
                      .text(parts.bearing.rolling.value == "roller" ? words("roller") : "")
                      .value("<axis>.bearing.dynamic_rating", "C %1")
                      .value("<axis>.bearing.static_rating", "C0 %1")
                      .value("<axis>.bearing.spacing", "%1 apart")
                      .taken();
    lines.push_back(std::move(bearing));
  }
  if (parts.joint.screws.si) {
    PartLine screws{"Screw of the joint", parts.joint.thread.value, axis, *parts.joint.screws.si};
    screws.key = Key(rig, axis)
                     .text(parts.joint.property_class.value)
                     .value("<axis>.joint.circle_diameter", "circle ⌀ %1")
                     .value("<axis>.joint.tightening_torque", "tightened with %1")
                     .taken();
    lines.push_back(std::move(screws));
  }
  if (parts.cable.presence == Presence::given) {
    const bool ring = parts.cable.routing.value == "slip_ring";
    PartLine cable{ring ? "Slip ring" : "Cable", {}, axis, 1};
    if (!ring) cable.quantity = parts.cable.count.si.value_or(1);
    cable.key = Key(rig, axis)
                    .value("<axis>.cable.outer_diameter", "⌀ %1")
                    .value("<axis>.cable.free_length", "%1 free")
                    .value("<axis>.cable.bend_radius", "bend radius %1")
                    .value("<axis>.cable.ring_circuits", "%1 circuits")
                    .taken();
    lines.push_back(std::move(cable));
  }
}

void add_of_rig(const Rig& rig, std::vector<PartLine>& lines) {
  PartLine camera{"Camera"};
  camera.key = Key(rig, {})
                   .value("camera.columns", "%1 columns")
                   .value("camera.rows", "%1 rows")
                   .value("camera.horizontal_view")
                   .value("camera.frame_rate")
                   .taken();
  PartLine supply{"Supply"};
  supply.key = Key(rig, {}).value("supply.voltage").value("supply.current_limit").taken();
  lines.push_back(std::move(camera));
  lines.push_back(std::move(supply));
  const auto add = [&](std::string_view what, std::string_view path, std::string_view also = {}) {
    PartLine line{what};
    line.key = Key(rig, {}).value(path).value(also).taken();
    if (!line.key.empty()) lines.push_back(std::move(line));
  };
  add("Bus capacitors", "supply.bus_capacitance");
  add("Brake resistor", "supply.brake_resistor", "supply.brake_power");
  add("Fuse", "supply.fuse");
}

void add_bodies(const Rig& rig, Axis axis, std::vector<PartLine>& lines) {
  const bool pan = axis == Axis::pan;
  const std::vector<Body>& bodies = pan ? rig.on_pan : rig.on_tilt;
  for (std::size_t i = 0; i < bodies.size(); ++i) {
    PartLine line{"Body", bodies[i].name, axis};
    line.is_carried = stands_for_part(bodies[i]);
    if (line.is_carried) line.key = words("listed above");
    set_mass(line, bodies[i].mass_kg,
             (pan ? "on_pan[" : "on_tilt[") + std::to_string(i) + "].mass");
    lines.push_back(std::move(line));
  }
}

}  // namespace

std::vector<PartLine> parts_list(const Rig& rig) {
  std::vector<PartLine> lines;
  for (const Axis axis : kAxes) {
    add_turning(rig, axis, lines);
    add_held(rig, axis, lines);
  }
  add_of_rig(rig, lines);
  for (const Axis axis : kAxes) add_bodies(rig, axis, lines);
  return lines;
}

}  // namespace gazewright
