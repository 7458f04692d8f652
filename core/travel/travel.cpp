#include "core/travel/travel.h"

#include <algorithm>

#include "core/motion/cable_torque.h"

namespace gazewright {
namespace {

std::optional<double> soft_rad(const Stops& stops, std::optional<double> between_stops_rad) {
  if (stops.presence == Presence::none) return kInfinity;
  if (!between_stops_rad || !stops.soft_inset_rad.si) return {};
  return std::max(0.0, *between_stops_rad - 2 * *stops.soft_inset_rad.si);
}

}  // namespace

Travel travel_of(const AxisParts& parts) {
  Travel travel;
  travel.centre_rad = untwisted_rad(parts);
  travel.stops_rad = travel_between_stops_rad(parts.stops);
  travel.cable_rad = cable_travel_rad(parts.cable);
  travel.soft_rad = soft_rad(parts.stops, travel.stops_rad);
  if (travel.soft_rad && travel.cable_rad)
    travel.usable_rad = std::min(*travel.soft_rad, *travel.cable_rad);
  return travel;
}

}  // namespace gazewright
