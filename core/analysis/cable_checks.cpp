#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/analysis/travel_words.h"

namespace gazewright {
namespace {

using Way = Lever::Way;
constexpr auto kCableAndStops = joined(kStopGeometry, kTwist);

Compared cable(Context& c, Axis a) {
  const Travel& travel = c.travel(a);
  if (c.rig().axis(a).cable.presence == Presence::none) {
    return moot("no cable crosses this axis");
  }
  if (!travel.cable_rad || !travel.stops_rad) {
    return {travel.stops_rad, travel.cable_rad,
            "the travel of this routing or of the stops is not known"};
  }
  if (std::isinf(*travel.stops_rad)) {
    return {std::nullopt, *travel.cable_rad, "a cable crosses an axis that has no stops",
            Compared::Outcome::impossible};
  }
  return {*travel.stops_rad, *travel.cable_rad,
          "the stops let it turn ±" + say(*travel.stops_rad / 2, "rad", "deg") + ", the cable ±" +
              say(*travel.cable_rad / 2, "rad", "deg")};
}

constexpr Lever kCableLevers[] = {{"<axis>.cable.free_length", Way::up, 10},
                                  {"<axis>.stops.tab_width", Way::up, 20},
                                  {"<axis>.cable.twist_rating", Way::up, 10}};

constexpr Check kChecks[] = {
    {"<axis>.travel.cable", "Cable lasts to the stops", "would let the stop come before the cable",
     "<axis>.cable", "rad", "deg", kCableAndStops, cable, kCableLevers},
};

}  // namespace

std::span<const Check> cable_checks() { return kChecks; }

}  // namespace gazewright
