#include "core/analysis/arm_values.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/analysis/say.h"
#include "core/bodies/moved.h"
#include "core/data/materials.h"
#include "core/motion/slowing.h"
#include "core/travel/solid.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

// A body of on_pan counts as carried by the arm's end where its centre is in the end's last
// quarter.
constexpr double kEndShare = 0.25;

/// Half the room that what tilts takes along the tilt axis, from the tilt axis' origin. A body
/// without a shape counts with its centre. [m]
double reach_along_axis_m(const Rig& rig) {
  const Eigen::Vector3d along(0, 1, 0);
  double most = 0;
  for (const Body& body : rig.on_tilt) {
    const auto solid = solid_of(body);
    const double reach = solid ? solid->reach_m(along) : 0;
    most = std::max(most, std::abs(body.centre_m[1].value()) + reach);
  }
  return most;
}

/// All that the arm's end carries, in P: what tilts with tilt at 0, and the bodies at that height.
MassProperties carried_in_pan(const Rig& rig, double length_m) {
  std::vector<Body> carried;
  const double end_m = rig.tilt_axis_at_m[2].value();
  for (const Body& body : rig.on_pan)
    if (body.centre_m[2].value() > end_m - kEndShare * length_m) carried.push_back(body);
  for (Body body : rig.on_tilt) {
    for (std::size_t i = 0; i < 3; ++i)
      body.centre_m[i] = si_quantity(body.centre_m[i].value() + rig.tilt_axis_at_m[i].value());
    carried.push_back(std::move(body));
  }
  return combined(carried);
}

ArmCase case_of(const Rig& rig, ArmBeam beam, const MassProperties& load) {
  const Eigen::Vector3d at(rig.tilt_axis_at_m[0].value(), rig.tilt_axis_at_m[1].value(),
                           rig.tilt_axis_at_m[2].value());
  // A single arm stands on the side where the drive sits.
  if (!beam.is_fork && load.p_OC_m.y() < at.y()) beam.aside_m = -beam.aside_m;
  const Eigen::Vector3d end = at + Eigen::Vector3d(0, beam.is_fork ? 0 : beam.aside_m, 0);
  ArmCase made{beam, seen_from(load, end), {}, {}, 0};
  made.droop = droop_of(beam, made.load, rig.stand.lean_rad.value());
  made.modes = modes_of(beam, made.load, end);
  made.inertia_kgm2 = arm_inertia_kgm2(beam, at.x(), at.y());
  return made;
}

bool is_across(const Rig& rig) { return rig.arm.layers.value == "across"; }

/// "needs materials[1].modulus", or of a built-in one: "... has no modulus".
std::string lacks(const Rig& rig, const std::string& key) {
  for (std::size_t i = 0; i < rig.materials.size(); ++i)
    if (rig.materials[i].name == rig.arm.material)
      return words("needs materials[%1].%2", std::to_string(i), key);
  return words("%1 has no %2", rig.arm.material, key);
}

/// Fills in what comes from the material; why it cannot, or empty.
std::string take_material(const Rig& rig, ArmBeam& beam, ArmValues& values) {
  const Arm& arm = rig.arm;
  if (arm.material.empty()) return words("needs %1", "arm.material");
  if (std::string problem = material_problem(rig, arm.material); !problem.empty()) return problem;
  const Material material = *find_material(rig, arm.material);
  const bool across = is_across(rig);
  const Quantity& modulus = across ? material.layer_modulus_Pa : material.modulus_Pa;
  const Quantity& strength = across ? material.layer_strength_Pa : material.strength_Pa;
  values.strength_Pa = least_of(strength);
  if (!strength.si) values.strength_because = lacks(rig, across ? "layer_strength" : "strength");
  beam.modulus_Pa = arm.modulus_Pa.si.value_or(modulus.value());
  if (!arm.modulus_Pa.si && !modulus.si) return lacks(rig, across ? "layer_modulus" : "modulus");
  beam.density_kgpm3 = material.density_kgpm3.value();
  return material.density_kgpm3.si ? std::string() : lacks(rig, "density");
}

ArmValues values_of_arm(Context& context) {
  const Rig& rig = context.rig();
  ArmValues values;
  values.is_fork = rig.arm.support.value == "fork";
  const std::array<InputPath, 1> load{"<load>"};
  if (const auto missing = context.missing(load, Axis::pan); !missing.empty()) {
    values.because = say_needs(missing);
    return values;
  }
  const bool is_box = rig.arm.section.value != "bar";
  if (is_box && !rig.arm.wall_m.si) {
    values.because = words("needs %1", "arm.wall");
    return values;
  }
  const Quantity& infill = rig.arm.infill;
  if (!is_box && infill.source != Source::by_default && infill.value() == 0) {
    values.because = words(
        "needs %1 above 0, as a bar without a filling is nothing: a tube is a box", "arm.infill");
    return values;
  }
  ArmBeam beam;
  beam.length_m = rig.arm.length_m.value();
  beam.section = {rig.arm.width_m.value(), rig.arm.height_m.value(),
                  is_box ? rig.arm.wall_m.value() : 0, infill.value()};
  beam.values = values_of(beam.section);
  beam.aside_m = reach_along_axis_m(rig) + beam.section.height_m / 2;
  values.because = take_material(rig, beam, values);
  if (!values.because.empty()) return values;
  const MassProperties carried = carried_in_pan(rig, beam.length_m);
  values.side = case_of(rig, beam, carried);
  beam.is_fork = true;
  values.fork = case_of(rig, beam, carried);
  return values;
}

}  // namespace

const ArmValues& arm_values(Context& context) {
  return context.kept<ArmValues>(Axis::pan, [&] { return values_of_arm(context); });
}

double arm_stress_Pa(Context& context, const ArmCase& arm) {
  const RigBodies& bodies = context.bodies();
  const Eigen::Vector3d end =
      bodies.p_PT_m + Eigen::Vector3d(0, arm.beam.is_fork ? 0 : arm.beam.aside_m, 0);
  const Eigen::Vector3d pan(0, 0, largest_acceleration_radps2(context.model(Axis::pan)));
  const Eigen::Vector3d tilt(0, largest_acceleration_radps2(context.model(Axis::tilt)), 0);
  const MassProperties tilting = seen_from(bodies.on_tilt, end - bodies.p_PT_m);
  EndForces sum = weight_forces(arm.load, context.rig().stand.lean_rad.value());
  for (const EndForces& more :
       {inertia_forces(arm.load, -end, pan), inertia_forces(tilting, bodies.p_PT_m - end, tilt)}) {
    sum.force_N += more.force_N;
    sum.moment_Nm += more.moment_Nm;
  }
  return root_stress_Pa(arm.beam, sum);
}

std::string needs_of_both(Context& context, std::span<const InputPath> inputs) {
  std::vector<std::string> missing = context.missing(inputs, Axis::pan);
  for (std::string& name : context.missing(inputs, Axis::tilt))
    if (std::ranges::find(missing, name) == missing.end()) missing.push_back(std::move(name));
  return say_needs(missing);
}

}  // namespace gazewright
