#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/travel_words.h"

namespace gazewright {
namespace {

constexpr auto kBraking = joined(kRigidTrain, kTopSpeed);

Answer usable_travel(Context& c, Axis a) {
  return span(c.travel(a).usable_rad, "stops or cable do not give a travel", kNoStops);
}

Answer blind_sector(Context& c, Axis a) {
  const auto& usable = c.travel(a).usable_rad;
  if (!usable) return usable_travel(c, a);
  return std::max(0.0, 2 * M_PI - *usable);
}

const FigureRow kRows[] = {
    {{"<axis>.travel.stops", "Travel between the hard stops", "rad", "deg",
      "with w = 2·asin(width/2r): 2π − w_tab − w_post; n loose tabs: + n·(2π − 2·w_loose); "
      "window: window − w_tab",
      kStopSource, kStopGeometry},
     Axes::both,
     [](Context& c, Axis a) { return span(c.travel(a).stops_rad, why_no_travel(c, a), kNoStops); }},
    {{"<axis>.travel.soft", "Travel between the soft limits", "rad", "deg", "stops − 2·soft_inset",
      kTravelSource, kSoft},
     Axes::both,
     [](Context& c, Axis a) { return span(c.travel(a).soft_rad, why_no_travel(c, a), kNoStops); }},
    {{"<axis>.travel.usable", "Usable travel", "rad", "deg", "the part that all limits leave",
      kTravelSource, kUsable},
     Axes::both,
     usable_travel},
    {{"<axis>.travel.blind", "Blind sector", "rad", "deg", "2π − usable", kTravelSource, kUsable},
     Axes::both,
     blind_sector},
    {{"<axis>.travel.braking_angle", "Angle to stop from top speed", "rad", "deg",
      "rigid train, full braking, gravity and cable at rest pushing on", "handbook: motion",
      kBraking},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {braking_angle_rad(c.model(a), top_speed_radps(c.model(a))),
               "cannot brake: gravity and cable are more than braking torque and friction"};
     }},
};

}  // namespace

std::span<const FigureRow> travel_figures() { return kRows; }

}  // namespace gazewright
