#include <algorithm>
#include <cmath>

#include "core/analysis/bearing_case.h"
#include "core/analysis/checks.h"
#include "core/analysis/say.h"
#include "core/analysis/stop_case.h"
#include "core/analysis/travel_words.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr auto kLife =
    joined(kBearingInputs, std::array<InputPath, 3>{"<axis>.bearing.dynamic_rating",
                                                    "task.<axis>_move", "<axis>.bearing.life"});
constexpr auto kAtStop =
    joined(joined(kStopBlow, kBearingInputs), std::array<InputPath, 1>{"<axis>.stops.radius"});
constexpr auto kMoment =
    joined(kCarriedInputs, std::array<InputPath, 1>{"<axis>.bearing.overhang"});
constexpr auto kSeen =
    joined(kScale, std::array<InputPath, 5>{"<axis>.bearing.<load>", "on_pan", "on_tilt",
                                            "tilt.axis_at", "task.settle_band"});
constexpr auto kOutput = joined(kCarriedInputs, std::array<InputPath, 1>{"<axis>.gearbox.load_at"});

bool is_own(Context& c, Axis a) { return carrier_of(c.rig().axis(a)) != Carrier::gearbox; }
bool is_single(Context& c, Axis a) { return carrier_of(c.rig().axis(a)) == Carrier::single; }
bool is_in_gearbox(Context& c, Axis a) { return !is_own(c, a); }
bool meets_a_stop(Context& c, Axis a) { return is_own(c, a) && !has_no_stops(c, a); }
bool has_play(Context& c, Axis a) {
  const Bearing& b = c.rig().axis(a).bearing;
  return is_own(c, a) && (is_single(c, a) ? b.axial_play_m : b.radial_play_m).si.has_value();
}

std::string say_loads(Context& c, Axis a, const BearingCase& on) {
  const Carried& carried = carried_of(c, a);
  if (is_single(c, a))
    return words("it carries %1 radially, %2 axially and %3 of moment",
                 say(carried.load->radial_N, "N", "N"), say(on.axial_N, "N", "N"),
                 say(on.moment_Nm, "N.m", "N.m"));
  return words("the nearer bearing carries %1 radially, the farther one %2, axially up to %3",
               say(on.near_N, "N", "N"), say(on.far_N, "N", "N"), say(on.axial_N, "N", "N"));
}

Compared life(Context& c, Axis a) {
  const Answer life_s = bearing_life_s(c, a);
  const double wanted = c.rig().axis(a).bearing.life_s.value();
  if (!life_s.value) return {wanted, std::nullopt, life_s.because};
  if (std::isinf(*life_s.value)) return moot(words("the duty does not turn it"));
  return {wanted, life_s.value,
          words("%1; on the mean it turns %2", say_loads(c, a, bearing_case(c, a)),
                say(*mean_speed_radps(c, a).value, "rad/s", "rpm"))};
}

Compared static_safety(Context& c, Axis a) {
  const BearingCase& on = bearing_case(c, a);
  const double wanted = wanted_static_safety(on.bearing.rolling);
  if (!on.load) return {wanted, std::nullopt, on.because};
  return {wanted, on.bearing.static_rating_N / on.load->static_N,
          words("%1; together as %2 against C0", say_loads(c, a, on),
                say(on.load->static_N, "N", "N"))};
}

Compared at_stop(Context& c, Axis a) {
  constexpr double kJustNoDent = 1;  // common practice, no source
  const Answer load_N = static_load_at_stop_N(c, a);
  if (!load_N.value) return {kJustNoDent, std::nullopt, load_N.because};
  return {kJustNoDent, c.rig().axis(a).bearing.static_rating_N.value() / *load_N.value,
          words("hitting the stop at top speed pushes %1 on the tab, which the bearings take "
                "besides; a second tab opposite would halve it",
                say(*stop_force_N(c, a).value, "N", "N"))};
}

Compared moment(Context& c, Axis a) {
  const Bearing& b = c.rig().axis(a).bearing;
  const double safety =
      wanted_static_safety(b.rolling.value == "roller" ? Rolling::roller : Rolling::ball);
  const double bears = b.moment_rating_Nm.value() / safety;
  const Carried& on = carried_of(c, a);
  if (!on.load) return {std::nullopt, bears, on.because};
  return {
      on.load->moment_at_Nm(b.overhang_m.value()), bears,
      words(
          "the rating over a static safety of %1; weight makes %2 of it", say(safety, "1", "1"),
          say(on.load->weight_moment_Nm + on.load->weight_radial_N * std::abs(b.overhang_m.value()),
              "N.m", "N.m"))};
}

Compared play(Context& c, Axis a) {
  const double band = c.rig().task.settle_band_px.value();
  const auto play = bearing_play(c, a);
  if (!play)
    return {std::nullopt, band, for_axis(words("needs %1", "<axis>.bearing.radial_play"), a)};
  return {play->tip_rad / 2 * c.pixels_per_radian(), band,
          words("it may tip by %1 from side to side, %2 at the lens; the band is ± as wide",
                say(play->tip_rad, "rad", "arcmin"), say(play->across_m, "m", "mm"))};
}

Compared output_radial(Context& c, Axis a) {
  const double bears = c.rig().axis(a).gearbox.overhung_load_N.value();
  const Answer load_N = output_load_N(c, a);
  if (!load_N.value) return {std::nullopt, bears, load_N.because};
  const CarriedLoad& on = *carried_of(c, a).load;
  return {load_N.value, bears,
          words("the load is %1 and %2 at %3 from the output's face, counted as a force %4 from "
                "it; a bearing of its own would take it",
                say(on.radial_N, "N", "N"), say(on.moment_Nm, "N.m", "N.m"),
                say(c.rig().axis(a).gearbox.load_at_m.value(), "m", "mm"),
                say(c.rig().axis(a).gearbox.overhung_at_m.value(), "m", "mm"))};
}

Compared output_axial(Context& c, Axis a) {
  const double bears = c.rig().axis(a).gearbox.axial_load_N.value();
  const Carried& on = carried_of(c, a);
  if (!on.load) return {std::nullopt, bears, on.because};
  return {on.load->axial_N, bears,
          words("weight makes %1 of it, moving at the fastest the rest",
                say(on.load->weight_axial_N, "N", "N"))};
}

constexpr Lever kLifeLevers[] = {{"<axis>.bearing.dynamic_rating", Way::up, 30},
                                 {"<axis>.bearing.spacing", Way::up, 8},
                                 {"<axis>.bearing.preload", Way::down, 50},
                                 {"<axis>.loop.speed_limit", Way::down, 20}};
constexpr Lever kStaticLevers[] = {{"<axis>.bearing.static_rating", Way::up, 30},
                                   {"<axis>.bearing.spacing", Way::up, 8},
                                   {"<axis>.bearing.pitch_diameter", Way::up, 5},
                                   {"<axis>.bearing.preload", Way::down, 50}};
constexpr Lever kStopLevers[] = {{"<axis>.bearing.static_rating", Way::up, 30},
                                 {"<axis>.stops.radius", Way::up, 4},
                                 {"<axis>.stops.stiffness", Way::down, 30},
                                 {"<axis>.drive.speed_limit", Way::down, 20}};
constexpr Lever kMomentLevers[] = {{"<axis>.bearing.moment_rating", Way::up, 30},
                                   {"<axis>.bearing.overhang", Way::down, 20},
                                   {"<axis>.loop.speed_limit", Way::down, 20}};
constexpr Lever kPlayLevers[] = {{"<axis>.bearing.radial_play", Way::down, 100},
                                 {"<axis>.bearing.axial_play", Way::down, 100},
                                 {"<axis>.bearing.spacing", Way::up, 8},
                                 {"<axis>.bearing.pitch_diameter", Way::up, 5}};
constexpr Lever kRadialLevers[] = {{"<axis>.gearbox.load_at", Way::down, 20},
                                   {"<axis>.gearbox.overhung_load", Way::up, 30},
                                   {"<axis>.loop.speed_limit", Way::down, 20},
                                   {"<axis>.drive.current_limit", Way::down, 10}};
constexpr Lever kAxialLevers[] = {{"<axis>.gearbox.axial_load", Way::up, 30}};

constexpr Check kBearingChecks[] = {
    {"<axis>.bearing.life", "The bearings last the wanted life", "would make the bearings last",
     "<axis>.bearing", "s", "hour", kLife, life, kLifeLevers, nullptr,
     "<axis>.bearing.dynamic_rating", is_own},
    {"<axis>.bearing.static", "Static safety of the bearings",
     "would keep dents out of the bearings", "<axis>.bearing", "1", "1", kBearingInputs,
     static_safety, kStaticLevers, nullptr, "<axis>.bearing.static_rating", is_own},
    {"<axis>.bearing.stop", "Static safety of the bearings at the stop's blow",
     "would keep the blow from denting the bearings", "<axis>.bearing", "1", "1", kAtStop, at_stop,
     kStopLevers, nullptr, "<axis>.bearing.static_rating", meets_a_stop},
    {"<axis>.bearing.moment", "Tilting moment on the bearing",
     "would let the bearing bear the moment", "<axis>.bearing", "N.m", "N.m", kMoment, moment,
     kMomentLevers, nullptr, "<axis>.bearing.moment_rating", is_single},
    {"<axis>.bearing.play",
     "Play of the bearings in the picture",
     "would bring the play inside the band",
     "<axis>.bearing",
     "1",
     "px",
     kSeen,
     play,
     kPlayLevers,
     nullptr,
     {},
     has_play},
    {"<axis>.bearing.output_radial", "Overhung load on the gearbox's output",
     "would spare the gearbox's output", "<axis>.gearbox", "N", "N", kOutput, output_radial,
     kRadialLevers, nullptr, "<axis>.gearbox.overhung_load", is_in_gearbox},
    {"<axis>.bearing.output_axial", "Axial load on the gearbox's output",
     "would spare the gearbox's output", "<axis>.gearbox", "N", "N", kCarriedInputs, output_axial,
     kAxialLevers, nullptr, "<axis>.gearbox.axial_load", is_in_gearbox},
};

}  // namespace

std::span<const Check> bearing_checks() { return kBearingChecks; }

}  // namespace gazewright
