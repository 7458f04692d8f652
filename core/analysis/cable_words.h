#pragma once

#include <optional>

#include "core/analysis/context.h"
#include "core/travel/bend_rule.h"
#include "core/travel/cable.h"

/// What the figures and the checks of cables share.
namespace gazewright {

inline constexpr const char* kNoCable = "there is no cable across this axis";
inline constexpr const char* kOffUsable = "stops or cable do not give a travel";
inline constexpr const char* kWoundFlat = "the twist would wind the cable up flat";

inline bool has_no_cable(const Cable& cable) { return cable.presence == Presence::none; }
inline bool is_ribbon(const Cable& cable) {
  return cable.thickness_m.value() < cable.outer_diameter_m.value();
}
/// What bend rules count in. [m]
inline double bent_thickness_m(const Cable& cable) {
  return is_ribbon(cable) ? cable.thickness_m.value() : cable.outer_diameter_m.value();
}

/// The least radius by rule for a bend that does not move. [m]
inline double still_bend_m(const Cable& cable) {
  return bend_rule(is_ribbon(cable)).still * bent_thickness_m(cable);
}
/// The least radius by rule for a bend that the cable outlives. [m]
inline double lasting_bend_m(const Cable& cable) {
  return bend_rule(is_ribbon(cable)).lasting * bent_thickness_m(cable);
}

/// Twist from the middle to the end of the usable travel; empty: no travel. [rad]
std::optional<double> twist_each_way_rad(Context& c, Axis a);

/// The tightest bend that the routing makes, +infinity where it makes none, empty where there is no
/// such rig; `where` says which bend it is, or why there is none.
struct TightestBend {
  std::optional<double> radius_m;
  const char* where;
};
TightestBend tightest_bend_of(Context& c, Axis a);

}  // namespace gazewright
