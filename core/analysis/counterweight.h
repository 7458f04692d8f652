#pragma once

#include <optional>
#include <string>

#include "core/analysis/analysis.h"
#include "core/bodies/bodies.h"

/// The body that brings an axis' centre of mass onto it.
namespace gazewright {

class Context;

/// What turns about the axis, against it: pan as seen from above, tilt from its side.
struct OffAxis {
  double moment_kgm[2] = {0, 0};  ///< pan: along x and y of P, tilt at 0; tilt: along x and z of T
  double mass_kg = 0;
  double height_m = 0;  ///< pan: of that mass' centre along z of P; tilt: 0
  double size_kgm() const;
};
OffAxis off_axis(const RigBodies& bodies, Axis axis);

/// A ball of `balance.counterweight_density`, its centre `balance.counterweight_arm` from the axis
/// and opposite to the centre of mass, that cancels the offset. Mass and place have the digits that
/// a scale and a ruler read. Empty where the arm is missing or nothing is off the axis.
/// @param rig  with defaults.
std::optional<Body> counterweight_of(const Rig& rig, const RigBodies& bodies, Axis axis);

/// Path of the remedy that adds it: "counterweight.pan" or "counterweight.tilt".
std::string counterweight_path(Axis axis);
/// The rig after a remedy that is no field's value: "swap", "counterweight.<axis>". Empty for
/// others.
std::optional<Rig> with_whole_remedy(const Rig& rig, const Remedy& remedy);
/// The rig with one counterweight more: counterweight_of(), its arm where none is entered the
/// farthest that a body of its carrier reaches already, at least 40 mm. Where nothing is off the
/// axis, or it cannot be known yet, a ball of 50 g behind the axis to start from.
Rig with_new_counterweight(const Rig& rig, Axis axis);
/// By its name: "counterweight", "Counterweight 2".
bool is_counterweight(const Body& body);

/// What a body does to the balance of the axis that carries it.
struct CounterweightEffect {
  Axis axis = Axis::tilt;  ///< of its carrier
  std::optional<double>
      left_Nm;  ///< gravity torque that remains, as figure gravity.torque_max; empty: unknown
  std::optional<double> cancelling_kg;  ///< mass at its place that leaves the least off the axis;
                                        ///< empty: none does, or unknown
  std::optional<double> then_left_Nm;   ///< gravity torque with that mass
};
/// @pre there is such a body. @param rig  as written.
CounterweightEffect counterweight_effect(const Rig& rig, bool on_tilt, std::size_t index);

/// The remedy, where a counterweight can be worked out.
std::optional<Remedy> counterweight_remedy(Context& context, Axis axis);

}  // namespace gazewright
