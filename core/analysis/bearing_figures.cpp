#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/analysis/bearing_case.h"
#include "core/analysis/figures.h"
#include "core/analysis/stop_case.h"
#include "core/analysis/travel_words.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kDynamics = "rigid-body statics and dynamics; handbook: loads";
constexpr const char* kStatics = "statics; handbook: loads";
constexpr const char* kIso281 = "ISO 281:2007; handbook: loads";
constexpr const char* kIso76 = "ISO 76:2006; handbook: loads";
constexpr const char* kPlay = "geometry; handbook: loads";
constexpr const char* kNotPair = "it does not turn in a pair of bearings of its own";
constexpr const char* kNotSingle = "it does not turn in one bearing that bears the moment alone";
constexpr const char* kNotOwn = "the bearings in the gearbox carry it";

constexpr auto kLife = joined(
    kBearingInputs, std::array<InputPath, 2>{"<axis>.bearing.dynamic_rating", "task.<axis>_move"});
constexpr auto kSpeed = joined(kCarriedInputs, std::array<InputPath, 1>{"task.<axis>_move"});
constexpr auto kTabForce = joined(kStopBlow, std::array<InputPath, 1>{"<axis>.stops.radius"});
constexpr auto kAtStop = joined(kTabForce, kBearingInputs);
constexpr std::array<InputPath, 4> kPlayInputs{"<axis>.bearing.<load>", "on_pan", "on_tilt",
                                               "tilt.axis_at"};
constexpr auto kOutput =
    joined(kCarriedInputs,
           std::array<InputPath, 2>{"<axis>.gearbox.load_at", "<axis>.gearbox.overhung_load"});

template <double CarriedLoad::*part>
Answer carried(Context& c, Axis a) {
  const Carried& on = carried_of(c, a);
  return on.load ? Answer((*on.load).*part) : Answer::none(on.because);
}

bool is_own(Context& c, Axis a) { return carrier_of(c.rig().axis(a)) != Carrier::gearbox; }

template <double BearingCase::*part, Carrier kind>
Answer of_kind(Context& c, Axis a) {
  if (carrier_of(c.rig().axis(a)) != kind)
    return Answer::aside(kind == Carrier::pair ? kNotPair : kNotSingle);
  const Carried& on = carried_of(c, a);
  return on.load ? Answer(bearing_case(c, a).*part) : Answer::none(on.because);
}

template <double EquivalentLoad::*part>
Answer equivalent(Context& c, Axis a) {
  if (!is_own(c, a)) return Answer::aside(kNotOwn);
  const BearingCase& on = bearing_case(c, a);
  return on.load ? Answer((*on.load).*part) : Answer::none(on.because);
}

Answer life(Context& c, Axis a) {
  if (!is_own(c, a)) return Answer::aside(kNotOwn);
  Answer life_s = bearing_life_s(c, a);
  if (life_s.value && std::isinf(*life_s.value))
    return Answer::none(words("the duty does not turn it"));
  return life_s;
}

Answer static_safety(Context& c, Axis a) {
  const Answer load = equivalent<&EquivalentLoad::static_N>(c, a);
  return load.value ? Answer(c.rig().axis(a).bearing.static_rating_N.value() / *load.value) : load;
}

Answer stop_force(Context& c, Axis a) {
  return has_no_stops(c, a) ? Answer::none(kNoStops) : stop_force_N(c, a);
}

Answer stop_safety(Context& c, Axis a) {
  if (!is_own(c, a)) return Answer::aside(kNotOwn);
  if (has_no_stops(c, a)) return Answer::none(kNoStops);
  Answer load_N = static_load_at_stop_N(c, a);
  if (!load_N.value) return load_N;
  return c.rig().axis(a).bearing.static_rating_N.value() / *load_N.value;
}

template <double Play::*part>
Answer play(Context& c, Axis a) {
  if (!is_own(c, a)) return Answer::aside(kNotOwn);
  const auto play = bearing_play(c, a);
  return play ? Answer((*play).*part) : Answer::aside(words("no play of its bearings is entered"));
}

Answer output_radial(Context& c, Axis a) {
  return is_own(c, a) ? Answer::aside(words("bearings of its own carry the load"))
                      : output_load_N(c, a);
}

const FigureRow kBearingFigures[] = {
    {{"<axis>.bearing.radial_load", "Largest radial load on the axis", "N", "N",
      "weight and inertia m·(g, r·√(α² + ω⁴)) of all it turns, both axes at their fastest, added",
      kDynamics, kCarriedInputs},
     Axes::both,
     carried<&CarriedLoad::radial_N>},
    {{"<axis>.bearing.axial_load", "Largest axial load on the axis", "N", "N",
      "as radial_load, along the axis", kDynamics, kCarriedInputs},
     Axes::both,
     carried<&CarriedLoad::axial_N>},
    {{"<axis>.bearing.moment_load", "Largest tilting moment on the axis", "N.m", "N.m",
      "as radial_load, across the axis about the centre of mass' place on it", kDynamics,
      kCarriedInputs},
     Axes::both,
     carried<&CarriedLoad::moment_Nm>},
    {{"<axis>.bearing.weight_radial", "Radial load, weight's part", "N", "N",
      "m·g across the axis, worst pose", kStatics, kCarriedInputs},
     Axes::both,
     carried<&CarriedLoad::weight_radial_N>},
    {{"<axis>.bearing.weight_moment", "Tilting moment, weight's part", "N.m", "N.m",
      "m·g along the axis times the centre of mass' distance, worst pose", kStatics,
      kCarriedInputs},
     Axes::both,
     carried<&CarriedLoad::weight_moment_Nm>},
    {{"<axis>.bearing.mean_speed", "Mean speed over the duty", "rad/s", "rpm",
      "swept angle over time: moves per minute · move, or the duty's list",
      "swept angle counts as turns, common practice, no source; handbook: loads", kSpeed},
     Axes::both,
     mean_speed_radps},
    {{"<axis>.bearing.stop_force", "Radial force of the blow into the stop", "N", "N",
      "stop.torque_pushing/stops.radius", kStatics, kTabForce},
     Axes::both,
     stop_force},
    {{"<axis>.bearing.near_load", "Radial load on the nearer bearing", "N", "N",
      "radial·|1 + overhang/spacing| + moment/spacing", kStatics, kBearingInputs},
     Axes::both,
     of_kind<&BearingCase::near_N, Carrier::pair>,
     true},
    {{"<axis>.bearing.far_load", "Radial load on the farther bearing", "N", "N",
      "radial·|overhang|/spacing + moment/spacing", kStatics, kBearingInputs},
     Axes::both,
     of_kind<&BearingCase::far_N, Carrier::pair>,
     true},
    {{"<axis>.bearing.moment_at_bearing", "Tilting moment at the bearing", "N.m", "N.m",
      "radial·|overhang| + moment", kStatics, kCarriedInputs},
     Axes::both,
     of_kind<&BearingCase::moment_Nm, Carrier::single>,
     true},
    {{"<axis>.bearing.equivalent_load", "Equivalent load of the worst bearing", "N", "N",
      "X·Fr + Y·Fa where Fa/Fr > e, else Fr; preload in Fa", kIso281, kBearingInputs},
     Axes::both,
     equivalent<&EquivalentLoad::dynamic_N>,
     true},
    {{"<axis>.bearing.life", "Rating life of the bearings", "s", "hour",
      "10⁶·(C/P)^p·2π/mean_speed, p = 3 (balls) or 10/3 (rollers)", kIso281, kLife},
     Axes::both,
     life,
     true},
    {{"<axis>.bearing.static_load", "Static equivalent load of the worst bearing", "N", "N",
      "max(Fr, X0·Fr + Y0·Fa)", kIso76, kBearingInputs},
     Axes::both,
     equivalent<&EquivalentLoad::static_N>,
     true},
    {{"<axis>.bearing.static_safety", "Static safety of the bearings", "1", "1", "C0/static_load",
      kIso76, kBearingInputs},
     Axes::both,
     static_safety,
     true},
    {{"<axis>.bearing.stop_safety", "Static safety of the bearings at the stop's blow", "1", "1",
      "C0 over the static load with stop_force on the nearer bearing", kIso76, kAtStop},
     Axes::both,
     stop_safety,
     true},
    {{"<axis>.bearing.play", "Play of the bearings as an angle", "rad", "arcmin",
      "2·radial_play/spacing of a pair, 2·axial_play/pitch_diameter of a single one", kPlay,
      kPlayInputs},
     Axes::both,
     play<&Play::tip_rad>,
     true},
    {{"<axis>.bearing.play_lens", "Play of the bearings at the lens", "m", "mm",
      "radial_play·max(1, |1 + 2·arm/spacing|) of a pair, radial_play + play·|arm| of a single one",
      kPlay, kPlayInputs},
     Axes::both,
     play<&Play::across_m>,
     true},
    {{"<axis>.bearing.output_radial",
      "Radial load on the gearbox's output, where its data sheet has it", "N", "N",
      "max(radial, (radial·load_at + moment)/overhung_at)", kStatics, kOutput},
     Axes::both,
     output_radial,
     true},
};

}  // namespace

std::span<const FigureRow> bearing_figures() { return kBearingFigures; }

}  // namespace gazewright
