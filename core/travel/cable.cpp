#include "core/travel/cable.h"

namespace gazewright {

double twist_travel_rad(double twist_rating_radpm, double free_length_m) {
  return 2 * twist_rating_radpm * free_length_m;
}

std::optional<double> cable_travel_rad(const Cable& cable) {
  if (cable.presence == Presence::none) return kInfinity;
  const bool twists = cable.routing.value.empty() || cable.routing.value == "twist";
  if (!twists || !cable.twist_rating_radpm.si || !cable.free_length_m.si) return {};
  return twist_travel_rad(*cable.twist_rating_radpm.si, *cable.free_length_m.si);
}

}  // namespace gazewright
