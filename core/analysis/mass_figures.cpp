#include <algorithm>
#include <array>
#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/usable_travel.h"

namespace gazewright {
namespace {

using sv = std::string_view;
constexpr sv kOnPan[] = {"on_pan"};
constexpr sv kOnTilt[] = {"on_tilt"};
constexpr sv kAllBodies[] = {"on_pan", "on_tilt"};
constexpr sv kLoad[] = {"<load>"};
constexpr sv kPanLoadOverTilt[] = {"<load>", "tilt.stops.<travel>", "tilt.stops.soft_inset",
                                   "tilt.cable.<travel>"};
constexpr sv kRotor[] = {"<axis>.gearbox.ratio", "<axis>.motor.rotor_inertia",
                         "<axis>.gearbox.inertia"};
constexpr sv kRotorAndLoad[] = {"<load>", "<axis>.gearbox.ratio", "<axis>.motor.rotor_inertia",
                                "<axis>.gearbox.inertia"};
constexpr sv kPanTravel[] = {"pan.stops.<travel>", "pan.stops.soft_inset", "pan.cable.<travel>"};
constexpr auto kGravity =
    joined(std::to_array(kPanLoadOverTilt),
           joined(std::to_array(kPanTravel),
                  std::to_array<sv>({"on_pan", "on_tilt", "tilt.axis_at", "stand.lean"})));

constexpr sv kStatics = "statics of rigid bodies; handbook: bodies";
constexpr sv kParallelAxes = "parallel-axis theorem, handbook tables of solids; handbook: bodies";

Answer pan_load_extreme(Context& context, double sign) {
  const RigBodies& bodies = context.bodies();
  const auto pan_inertia = [&](double tilt) { return sign * mass_matrix_kgm2(bodies, tilt)(0, 0); };
  const auto travel = usable_interval(context, Axis::tilt);
  if (!travel) return Answer::none(kNeedsTravel);
  return sign * largest_over(*travel, pan_inertia);
}

Answer largest_gravity(Context& context, Axis axis) {
  const RigBodies& bodies = context.bodies();
  const auto own = usable_interval(context, axis);
  const auto other = usable_interval(context, axis == Axis::pan ? Axis::tilt : Axis::pan);
  if (!own || !other) return Answer::none(kNeedsTravel);
  double largest = 0;
  for (const double pose : telling_poses_rad(bodies, axis, other->least, other->most)) {
    largest =
        std::max(largest, gravity_curve(bodies, axis, pose).largest_Nm(own->least, own->most));
  }
  return largest;
}

Answer balance_offset(Context& context, Axis) {
  const Eigen::Vector3d& centre = context.bodies().on_tilt.p_OC_m;
  return std::hypot(centre.x(), centre.z());
}

const FigureRow kMassFigures[] = {
    {{"mass.on_pan", "Mass that turns with pan only", "kg", "g", "sum of on_pan", kStatics, kOnPan},
     Axes::rig,
     [](Context& c, Axis) -> Answer { return c.bodies().on_pan.mass_kg; }},
    {{"mass.on_tilt", "Mass that tilts", "kg", "g", "sum of on_tilt", kStatics, kOnTilt},
     Axes::rig,
     [](Context& c, Axis) -> Answer { return c.bodies().on_tilt.mass_kg; }},
    {{"mass.total", "Moving mass", "kg", "g", "on_pan + on_tilt", kStatics, kAllBodies},
     Axes::rig,
     [](Context& c, Axis) -> Answer {
       return c.bodies().on_pan.mass_kg + c.bodies().on_tilt.mass_kg;
     }},
    {{"<axis>.inertia.load", "Load inertia about the axis", "kg.m2", "g.m2",
      "sum of I + m·d² of all bodies the axis turns, tilt at 0", kParallelAxes, kLoad},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return c.model(a).load.inertia_kgm2; }},
    {{"pan.inertia.load_min", "Least load inertia over the tilt travel", "kg.m2", "g.m2",
      "least M11(θ), θ in the usable tilt travel", kParallelAxes, kPanLoadOverTilt},
     Axes::pan_only,
     [](Context& c, Axis) { return pan_load_extreme(c, -1); }},
    {{"pan.inertia.load_max", "Largest load inertia over the tilt travel", "kg.m2", "g.m2",
      "largest M11(θ), θ in the usable tilt travel", kParallelAxes, kPanLoadOverTilt},
     Axes::pan_only,
     [](Context& c, Axis) { return pan_load_extreme(c, 1); }},
    {{"<axis>.inertia.rotor_reflected", "Rotor through the gear", "kg.m2", "g.m2",
      "N²·(rotor + gearbox inertia)",
      "reflected inertia, Dubey, Fundamentals of Electrical Drives, ex. 2.1", kRotor},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return c.model(a).reflected_inertia_kgm2(); }},
    {{"<axis>.inertia.ratio", "Load over reflected rotor", "1", "1", "load / rotor_reflected",
      "definition; sources disagree on what is acceptable, see handbook: motion", kRotorAndLoad},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return c.model(a).load.inertia_kgm2 / c.model(a).reflected_inertia_kgm2();
     }},
    {{"tilt.balance.offset", "Centre of mass off the tilt axis", "m", "mm", "√(x² + z²) in T",
      kStatics, kOnTilt},
     Axes::tilt_only,
     balance_offset},
    {{"<axis>.gravity.torque_max", "Largest gravity torque", "N.m", "mN.m",
      "largest |−∂V/∂q| over the usable travel of both axes", kStatics, kGravity},
     Axes::both,
     largest_gravity},
};

}  // namespace

std::span<const FigureRow> mass_figures() { return kMassFigures; }

}  // namespace gazewright
