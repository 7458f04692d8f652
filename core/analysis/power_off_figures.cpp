#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/power_off.h"
#include "core/analysis/say.h"
#include "core/analysis/travel_words.h"
#include "core/motion/slowing.h"
#include "core/travel/power_off.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kPowerOffSource = "energy of the rigid train; handbook: travel";
constexpr auto kShorted = joined(
    kCoast, std::array<InputPath, 3>{"<axis>.motor.phase_resistance",
                                     "<axis>.motor.phase_inductance", "<axis>.motor.pole_pairs"});

/// "gravity", or with cables that spring back "gravity and cable".
std::string pullers(const AxisModel& model) {
  return model.load.cable_stiffness_Nmprad > 0 ? words("gravity and cable together are")
                                               : words("gravity is");
}

std::string why_it_goes_on(const AxisModel& model, Slowing by, double pull_Nm) {
  if (pull_Nm == 0) return words("coasts into the stop: nothing slows it");
  const double top = top_speed_radps(model);
  const auto sinking = sinking_speed_radps(model, by, pull_Nm, top);
  if (sinking)
    return words("coasts into the stop: %1 more than friction, it goes on at %2", pullers(model),
                 say(*sinking, "rad/s", "deg/s"));
  return words("coasts into the stop: %1 more than what slows it", pullers(model));
}

Answer stopping(Context& c, Axis a, Slowing by) {
  const AxisModel& model = c.model(a);
  const double pull = worst_pull_Nm(model.load, c.travel(a));
  const auto angle = stopping_angle_rad(model, by, top_speed_radps(model), pull);
  if (!angle) return Answer::none(why_it_goes_on(model, by, pull));
  return *angle;
}

Answer stop_speed(Context& c, Axis a, double from_radps) {
  if (has_no_stops(c, a)) return Answer::none(kNoStops);
  if (!has_stops_to_meet(c.travel(a))) return Answer::none(why_no_travel(c, a));
  return coasting_stop_speed_radps(c.model(a), c.travel(a), from_radps);
}

Answer holding_torque(Context& c, Axis a) {
  const double hold = friction_hold_Nm(c.model(a));
  if (std::isinf(hold))
    return Answer::none(words("the gearbox locks itself: nothing turns it back"));
  return hold;
}

const FigureRow kPowerOffFigures[] = {
    {{"<axis>.power_off.coast_angle", "Angle it coasts from top speed without power", "rad", "deg",
      "∫ ω/deceleration dω up to speed_top, motor open, worst |gravity + cable| pushing on",
      kPowerOffSource, kCoast},
     Axes::both,
     [](Context& c, Axis a) { return stopping(c, a, Slowing::open); }},
    {{"<axis>.power_off.shorted_angle", "Angle it coasts with the motor's phases shorted", "rad",
      "deg", "the same with T = Kt·e·R/(R² + X²), e = Kt·ω_m/1.5, X = p·ω_m·L",
      "steady short circuit of a synchronous machine, from memory; handbook: travel", kShorted},
     Axes::both,
     [](Context& c, Axis a) { return stopping(c, a, Slowing::shorted); }},
    {{"<axis>.power_off.holding_torque", "Torque that friction holds without power", "N.m", "N.m",
      "coulomb + N·drag/η_back", "statics of a gear that its load drives; handbook: travel",
      kHolds},
     Axes::both,
     holding_torque},
    {{"<axis>.power_off.stop_speed",
      "Speed into the hard stop when power drops, if the loop's limit fails", "rad/s", "deg/s",
      "dω²/dφ = −2·deceleration from speed_top, motor open, at the worst place between the soft "
      "limits",
      kPowerOffSource, kCoastIntoStop},
     Axes::both,
     [](Context& c, Axis a) { return stop_speed(c, a, top_speed_radps(c.model(a))); }},
    {{"<axis>.power_off.limited_stop_speed",
      "Speed into the hard stop when power drops at the loop's limit", "rad/s", "deg/s",
      "the same from min(speed_top, loop.speed_limit)", kPowerOffSource, kCoastIntoStopLimited},
     Axes::both,
     [](Context& c, Axis a) { return stop_speed(c, a, fastest_asked_radps(c.model(a))); }},
};

}  // namespace

std::span<const FigureRow> power_off_figures() { return kPowerOffFigures; }

}  // namespace gazewright
