#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/travel_words.h"
#include "core/motion/slowing.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr auto kTopBraking = joined(kRigidTrain, kTopSpeed);
constexpr auto kLeastInset =
    joined(kBraking,
           std::array<InputPath, 2>{"<axis>.drive.control_rate", "<axis>.drive.current_bandwidth"});
constexpr auto kSpeedAtStop = joined(kBraking, kSoft);
constexpr const char* kCannotBrake =
    "cannot brake: gravity and cable are more than braking torque and friction";
constexpr const char* kBrakingSource = "energy of the rigid train; handbook: travel";

Answer usable_travel(Context& c, Axis a) {
  return span(c.travel(a).usable_rad, "stops or cable do not give a travel", kNoStops);
}

Answer blind_sector(Context& c, Axis a) {
  const auto& usable = c.travel(a).usable_rad;
  if (!usable) return usable_travel(c, a);
  return std::max(0.0, 2 * M_PI - *usable);
}

Answer braking_angle(Context& c, Axis a) {
  const AxisModel& model = c.model(a);
  return {stopping_angle_rad(model, Slowing::braking, top_speed_radps(model),
                             worst_pull_Nm(model.load, c.travel(a))),
          kCannotBrake};
}

Answer speed_at_stop(Context& c, Axis a) {
  if (has_no_stops(c, a)) return Answer::none(kNoStops);
  if (!c.travel(a).stops_rad) return Answer::none(why_no_travel(c, a));
  return c.speed_at_stop_radps(a);
}

const FigureRow kTravelFigures[] = {
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
      "∫ ω/deceleration dω up to speed_top, worst |gravity + cable| pushing on", kBrakingSource,
      kTopBraking},
     Axes::both,
     braking_angle},
    {{"<axis>.travel.braking_angle_limit", "Angle to stop from the speed limit", "rad", "deg",
      "∫ ω/deceleration dω up to min(speed_top, loop.speed_limit), worst |gravity + cable| pushing "
      "on",
      kBrakingSource, kBraking},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {c.braking_angle_rad(a), kCannotBrake};
     }},
    {{"<axis>.travel.least_inset", "Smallest safe inset of the soft limits", "rad", "deg",
      "braking_angle_limit + ω·(2/control_rate + 1/(2π·current_bandwidth))", kBrakingSource,
      kLeastInset},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {least_inset_rad(c, a), kCannotBrake};
     }},
    {{"<axis>.travel.speed_at_stop", "Speed at the hard stop, braking from the soft limit", "rad/s",
      "deg/s",
      "dω²/dφ = −2·deceleration over soft_inset from the speed limit, worst |gravity + cable| "
      "pushing on",
      kBrakingSource, kSpeedAtStop},
     Axes::both,
     speed_at_stop},
};

}  // namespace

std::span<const FigureRow> travel_figures() { return kTravelFigures; }

}  // namespace gazewright
