#include "core/analysis/figures.h"
#include "core/analysis/homing_values.h"
#include "core/analysis/say.h"
#include "core/analysis/travel_words.h"
#include "core/travel/vernier.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kHomingSource = "handbook: homing";
constexpr const char* kWindow = "common practice, no source; handbook: homing";
constexpr const char* kNoMove = "needs no move: an encoder reads the output";
constexpr auto kHoming = joined(kStopGeometry, std::array<InputPath, 1>{"<axis>.gearbox.ratio"});
constexpr std::array<InputPath, 1> kRatio{"<axis>.gearbox.ratio"};
constexpr std::array<InputPath, 4> kPush{"<axis>.motor.speed_constant", "<axis>.gearbox.ratio",
                                         "<axis>.gearbox.efficiency", "<axis>.homing.current"};
constexpr auto kContact = joined(kHomingBlow, std::array<InputPath, 1>{"<axis>.homing.current"});

Answer homing_spacing(Context& c, Axis a) { return homing_spacing_rad(encoder_turns(c, a)); }

Answer candidates(Context& c, Axis a) {
  const auto& stops = c.travel(a).stops_rad;
  if (!stops) return Answer::none(why_no_travel(c, a));
  if (std::isinf(*stops)) return Answer::none(kNoStops);
  return homing_candidates(*stops, encoder_turns(c, a));
}

Answer vernier_range(Context& c, Axis a) {
  return {vernier_range_rad(encoder_turns(c, a), c.rig().axis(a).homing.second_ratio.value()), ""};
}

Answer vernier_room(Context& c, Axis a) {
  const auto searched = searched_rad(c, a);
  if (!searched) return Answer::none(why_no_travel(c, a));
  const auto separation = vernier_separation_rad(
      encoder_turns(c, a), c.rig().axis(a).homing.second_ratio.value(), *searched);
  if (!separation) return Answer::none(words("the first encoder alone tells the angles apart"));
  return *separation / 2;
}

double push_Nm(Context& c, Axis a) {
  return torque_per_ampere_NmpA(c, a) * c.rig().axis(a).homing.current_A.value();
}

Answer contact(Context& c, Axis a) {
  if (has_no_stops(c, a)) return Answer::none(kNoStops);
  return push_Nm(c, a) + stop_blow_Nm(c, a);
}

Answer most_current(Context& c, Axis a) {
  const double most = push_window(c, a).most_A;
  if (most > 0) return most;
  return Answer::none(words("at %1 meeting the stop alone is more than the gearbox should bear",
                            say(homing_speed_radps(c, a), "rad/s", "deg/s")));
}

Answer most_speed(Context& c, Axis a) {
  if (has_no_stops(c, a)) return Answer::none(kNoStops);
  const double left = gentle_torque_Nm(c, a) - push_Nm(c, a);
  if (std::isinf(left)) return Answer::none(words("the gearbox has no torque limit"));
  if (left <= 0) return Answer::none(words("the push alone is more than the gearbox should bear"));
  return left / stop_blow_Nm(c, a) * homing_speed_radps(c, a);
}

Answer time(Context& c, Axis a) {
  const HomingBy by = homing_by(c, a);
  if (by == HomingBy::output) return Answer::aside(kNoMove);
  if (by == HomingBy::second_encoder)
    return Answer::aside(words("needs no move: two encoders are read"));
  const auto searched = searched_rad(c, a);
  if (!searched) return Answer::none(why_no_travel(c, a));
  if (by == HomingBy::stop && has_no_stops(c, a)) return Answer::none(kNoStops);
  return homing_time_s(*searched, homing_speed_radps(c, a), by == HomingBy::stop);
}

const FigureRow kHomingFigures[] = {
    {{"<axis>.homing.spacing", "Angle between equal encoder readings", "rad", "deg",
      "2π/N, encoder at the motor; 2π at the output", "geometry; handbook: homing", kRatio},
     Axes::both,
     homing_spacing},
    {{"<axis>.homing.candidates", "Output angles that fit one reading", "1", "1",
      "⌈travel between stops / spacing⌉", "geometry; handbook: homing", kHoming},
     Axes::both,
     candidates},
    {{"<axis>.homing.vernier_range", "Angle after which both encoders repeat", "rad", "deg",
      "2π·q/gcd(p, s), turns p/q and s/q per output turn; else 2π/|N − N₂|", kHomingSource,
      kVernier},
     Axes::both,
     vernier_range,
     true},
    {{"<axis>.homing.vernier_room", "Error that the second encoder may have in all", "rad", "deg",
      "½·min|k·N₂/N − nearest whole|·2π, k = 1 … travel/spacing", kHomingSource, kVernier},
     Axes::both,
     vernier_room,
     true},
    {{"<axis>.homing.current_least", "Homing current that beats friction", "A", "A",
      "(friction + drag at the homing speed + largest |gravity + cable| of any pose)/(η·N·Kt)",
      kWindow, kMoving},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return moving_torque_Nm(c, a) / torque_per_ampere_NmpA(c, a);
     }},
    {{"<axis>.homing.current_most", "Homing current that spares the gearbox", "A", "A",
      "(min(rated, peak) − ω·√(k·J))/(η·N·Kt), at most the drive's and motor's limit", kWindow,
      kHomingBlow},
     Axes::both,
     most_current},
    {{"<axis>.homing.push", "Push at the homing current", "N.m", "N.m", "η·N·Kt·i",
      "torque constant; handbook: homing", kPush},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return push_Nm(c, a); },
     true},
    {{"<axis>.homing.contact", "Torque on the stop when homing", "N.m", "N.m",
      "η·N·Kt·i + ω·√(k·J)", "energy balance ½Jω² = ½kφ²; handbook: homing", kContact},
     Axes::both,
     contact,
     true},
    {{"<axis>.homing.speed_most", "Homing speed that spares the gearbox", "rad/s", "deg/s",
      "(min(rated, peak) − η·N·Kt·i)/√(k·J)", "energy balance; handbook: homing", kContact},
     Axes::both,
     most_speed,
     true},
    {{"<axis>.homing.time", "Time to find the stop or flag from the far end", "s", "s",
      "travel/speed, for a stop 0.2 s more; 30 deg/s where no speed is entered", kWindow,
      kStopGeometry},
     Axes::both,
     time},
};

}  // namespace

std::span<const FigureRow> homing_figures() { return kHomingFigures; }

}  // namespace gazewright
