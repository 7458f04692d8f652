#pragma once

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/analysis/travel_words.h"
#include "core/analysis/worst_pose.h"
#include "core/motion/runaway.h"
#include "core/travel/impact.h"
#include "core/travel/tab_material.h"

/// What the figures and the checks of a blow into the stop share.
namespace gazewright {

inline constexpr auto kStopBlow =
    joined(joined(kStall, kRotors),
           joined(kTopSpeed, std::array<InputPath, 2>{"<load>", "<axis>.stops.stiffness"}));
inline constexpr auto kSprungBlow =
    joined(kStopBlow, std::array<InputPath, 1>{"<axis>.gearbox.stiffness"});
inline constexpr std::array<InputPath, 3> kTabSection{
    "<axis>.stops.tab_width", "<axis>.stops.tab_thickness", "<axis>.stops.radius"};
inline constexpr auto kTabShear = joined(kStopBlow, kTabSection);
inline constexpr auto kTabBending =
    joined(kTabShear, std::array<InputPath, 1>{"<axis>.stops.tab_height"});

/// A runaway from one soft limit through the whole travel into the far stop.
inline constexpr auto kRunawayBlow = joined(kRigidTrain, kSoft);

/// One axis on its way into its stop. `push` is the stall torque, held right up to the peak.
struct StopCase {
  StopSpring spring;
  double load_kgm2 = 0, rotor_kgm2 = 0, top_radps = 0, push_Nm = 0, rebound = 0;
  double inertia_kgm2() const { return load_kgm2 + rotor_kgm2; }
  Impact blow(double speed_radps, double torque_Nm) const {
    return impact_of(spring, inertia_kgm2(), speed_radps, torque_Nm);
  }
  Impact worst() const { return blow(top_radps, push_Nm); }
};

inline StopCase stop_case(Context& c, Axis a, const AxisModel& model) {
  const Stops& stops = c.rig().axis(a).stops;
  return {{stops.stiffness_Nmprad.value(), stops.bumper_travel_rad.si.value_or(kInfinity),
           stops.hard_stiffness_Nmprad.value()},
          model.load.inertia_kgm2,
          model.reflected_inertia_kgm2(),
          top_speed_radps(model),
          stall_torque_Nm(model),
          stops.rebound.value()};
}
/// With the other axis at rest, as figures take it.
inline StopCase stop_case(Context& c, Axis a) { return stop_case(c, a, c.model(a)); }

/// Empty where the stops leave no travel. @pre kRunawayBlow; there is a stop. [rad/s]
inline std::optional<double> runaway_radps(Context& c, Axis a) {
  struct Runaway {
    std::optional<double> radps;
  };
  return c
      .kept<Runaway>(a,
                     [&]() -> Runaway {
                       const Travel& travel = c.travel(a);
                       const double stops = travel.stops_rad.value_or(0);
                       if (!(stops > 0)) return {};
                       const double soft = std::clamp(travel.soft_rad.value_or(0), 0.0, stops);
                       return {runaway_speed_radps(c.model(a), (stops + soft) / 2)};
                     })
      .radps;
}

/// The largest speed at which the stop can be hit: top speed, or where that is less what full
/// torque reaches over the whole travel, gravity and cables at their worst pushing on all the way.
/// [rad/s]
inline double hit_radps(Context& c, Axis a) {
  const double top = top_speed_radps(c.model(a));
  const auto runaway = c.missing(kRunawayBlow, a).empty() ? runaway_radps(c, a) : std::nullopt;
  if (!runaway) return top;
  const double pushed = 2 * worst_pull_Nm(c, a) * c.travel(a).stops_rad.value();
  return std::min(top, std::sqrt(*runaway * *runaway + pushed / moving_inertia_kgm2(c, a)));
}

/// The hardest blow: with the other axis where this one's load is largest.
inline StopCase worst_stop_case(Context& c, Axis a) {
  StopCase stop = stop_case(c, a, worst_pose(c, a).model);
  stop.top_radps = hit_radps(c, a);
  return stop;
}

/// The hardest blow with the gear as a spring.
inline const std::optional<SprungImpact>& worst_sprung_blow(Context& c, Axis a) {
  const StopCase stop = worst_stop_case(c, a);
  if (!worst_pose(c, a).is_heavier && stop.top_radps == top_speed_radps(c.model(a)))
    return c.sprung_blow(a);
  struct Blow {
    std::optional<SprungImpact> impact;
  };
  return c
      .kept<Blow>(
          a,
          [&]() -> Blow {
            const SprungTrain train{stop.load_kgm2, stop.rotor_kgm2,
                                    c.model(a).gear.stiffness_Nmprad};
            return {sprung_impact(stop.spring, train, stop.top_radps, stop.push_Nm, stop.rebound)};
          })
      .impact;
}

inline bool has_bumper(Context& c, Axis a) {
  return std::isfinite(c.rig().axis(a).stops.bumper_travel_rad.si.value_or(kInfinity));
}

/// A bumper that ends needs to know what follows; empty: nothing is missing.
inline std::string missing_of_bumper(Context& c, Axis a) {
  if (!has_bumper(c, a) || c.rig().axis(a).stops.hard_stiffness_Nmprad.si) return {};
  return for_axis("needs <axis>.stops.hard_stiffness, as its bumper has a travel", a);
}

/// The narrowest of the tabs that pass the blow on; loose tabs are taken as high and as thick.
inline double narrowest_tab_m(const Stops& stops) {
  const double tab = stops.tab_width_m.value();
  if (stops.kind.value != "trailing") return tab;
  return std::min(tab, stops.trailer_width_m.si.value_or(tab));
}

/// Stress in the tab at top speed, the drive still pushing. [Pa]
inline double tab_bending_Pa(Context& c, Axis a, const StopCase& stop) {
  const Stops& stops = c.rig().axis(a).stops;
  return tab_bending_Pa(stop.worst().torque_Nm / stops.radius_m.value(), stops.tab_height_m.value(),
                        narrowest_tab_m(stops), stops.tab_thickness_m.value());
}
inline double tab_shear_Pa(Context& c, Axis a, const StopCase& stop) {
  const Stops& stops = c.rig().axis(a).stops;
  return tab_shear_Pa(stop.worst().torque_Nm / stops.radius_m.value(), narrowest_tab_m(stops),
                      stops.tab_thickness_m.value());
}

}  // namespace gazewright
