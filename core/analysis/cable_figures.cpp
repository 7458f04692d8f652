#include "core/analysis/cable_words.h"
#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/travel_words.h"
#include "core/travel/cable_twist.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kCableSource = "geometry; handbook: cables";
constexpr const char* kRule =
    "NASA-STD-8739.4, 7.3.21; how many bends it lives through is for its maker to say";
constexpr InputPath kBend[]{"<axis>.cable.<bend>"};
constexpr InputPath kBundle[]{"<axis>.cable.outer_diameter", "<axis>.cable.lay_radius"};
constexpr InputPath kDiameter[]{"<axis>.cable.outer_diameter"};

const Cable& cable_of(Context& c, Axis a) { return c.rig().axis(a).cable; }

Answer cable_travel(Context& c, Axis a) {
  const Cable& cable = cable_of(c, a);
  if (has_no_cable(cable)) return Answer::none(kNoCable);
  return span(c.travel(a).cable_rad, why_no_cable_travel(cable), "a slip ring turns without end");
}

constexpr const char* why_not(Routing only) {
  switch (only) {
    case Routing::twist:
      return "only a cable along the axis twists";
    case Routing::coil:
      return "the cable is not coiled";
    case Routing::loop:
      return "the cable hangs in no loop";
    case Routing::slip_ring:
      return "there is no slip ring";
  }
  return "";
}

/// A figure that only one routing has.
template <Routing only, Answer compute(Context&, Axis, const Cable&)>
Answer of(Context& c, Axis a) {
  const Cable& cable = cable_of(c, a);
  if (has_no_cable(cable)) return Answer::aside(kNoCable);
  if (routing_of(cable) != only) return Answer::aside(why_not(only));
  if (const char* why = why_no_cable_travel(cable); *why != '\0') return Answer::none(why);
  return compute(c, a, cable);
}

Answer bundle(Context&, Axis, const Cable& cable) {
  return 2 * cable.lay_radius_m.value() + cable.outer_diameter_m.value();
}

Answer strain(Context& c, Axis a, const Cable& cable) {
  const auto twist = twist_each_way_rad(c, a);
  if (!twist) return Answer::none(kOffUsable);
  return helix_strain(cable.lay_radius_m.value(), *twist, cable.free_length_m.value());
}

Answer shortening(Context& c, Axis a, const Cable& cable) {
  const auto twist = twist_each_way_rad(c, a);
  if (!twist) return Answer::none(kOffUsable);
  return {helix_shortening_m(cable.lay_radius_m.value(), *twist, cable.free_length_m.value()),
          kWoundFlat};
}

Answer turns_on_hub(Context&, Axis, const Cable& cable) {
  return coil_turns_on_hub(coil_of(cable));
}
Answer turns_at_wall(Context&, Axis, const Cable& cable) {
  return coil_turns_at_wall(coil_of(cable));
}
Answer fill(Context&, Axis, const Cable& cable) { return coil_fill(coil_of(cable)); }
Answer hang(Context&, Axis, const Cable& cable) { return loop_depth_m(loop_of(cable)); }

Answer tightest_bend(Context& c, Axis a) {
  if (has_no_cable(cable_of(c, a))) return Answer::aside(kNoCable);
  const TightestBend bend = tightest_bend_of(c, a);
  return span(bend.radius_m, bend.where, bend.where);
}

Answer lasting_rule(Context& c, Axis a) {
  if (has_no_cable(cable_of(c, a))) return Answer::aside(kNoCable);
  return lasting_bend_m(cable_of(c, a));
}

Answer still_rule(Context& c, Axis a) {
  if (has_no_cable(cable_of(c, a))) return Answer::aside(kNoCable);
  return still_bend_m(cable_of(c, a));
}

const FigureRow kCableFigures[] = {
    {{"<axis>.travel.cable", "Travel the cable allows", "rad", "deg",
      "twist: 2·twist_rating·free_length; coil: 2π·(turns on the hub − turns at the wall); loop: "
      "2·acos((a² + ρ² − D²)/2aρ), D = L − (π − 2)·R",
      "twist rating by the cable's maker; else geometry; handbook: cables", kCableTravel},
     Axes::both,
     cable_travel},
    {{"<axis>.cable.bundle_diameter", "Diameter of the cable bundle", "m", "mm",
      "2·lay_radius + outer_diameter", kCableSource, kBundle},
     Axes::both,
     of<Routing::twist, bundle>,
     true},
    {{"<axis>.cable.strain", "Stretch of the outermost cable without slack", "1", "%",
      "√(1 + (lay_radius·usable/2/L)²) − 1", kCableSource, kBend},
     Axes::both,
     of<Routing::twist, strain>,
     true},
    {{"<axis>.cable.shortening", "Slack that the twist needs", "m", "mm",
      "L − √(L² − (lay_radius·usable/2)²)", kCableSource, kBend},
     Axes::both,
     of<Routing::twist, shortening>,
     true},
    {{"<axis>.cable.turns_on_hub", "Turns when wound tight", "1", "1", "(√(r_h² + L·t/π) − r_h)/t",
      kCableSource, kCableTravel},
     Axes::both,
     of<Routing::coil, turns_on_hub>,
     true},
    {{"<axis>.cable.turns_at_wall", "Turns when let out", "1", "1", "(r_w − √(r_w² − L·t/π))/t",
      kCableSource, kCableTravel},
     Axes::both,
     of<Routing::coil, turns_at_wall>,
     true},
    {{"<axis>.cable.fill", "Share of the coil's room that is filled", "1", "%",
      "L·t/(π·(r_w² − r_h²)); most travel at half", kCableSource, kCableTravel},
     Axes::both,
     of<Routing::coil, fill>,
     true},
    {{"<axis>.cable.hang", "How far the loop hangs down", "m", "mm",
      "(L − π·g/2)/2 + g/2, g = |a − ρ|", kCableSource, kCableTravel},
     Axes::both,
     of<Routing::loop, hang>,
     true},
    {{"<axis>.cable.tightest_bend", "Tightest bend of the cable", "m", "mm",
      "twist: L²/(lay_radius·(usable/2)²); coil: hub_radius; loop: |a − ρ|/2", kCableSource, kBend},
     Axes::both,
     tightest_bend,
     true},
    {{"<axis>.cable.bend_rule", "Bend radius for lasting use by rule", "m", "mm",
      "10·outer_diameter; a ribbon: 10·thickness; as shipped, data file cables", kRule, kDiameter},
     Axes::both,
     lasting_rule,
     true},
    {{"<axis>.cable.bend_rule_still", "Bend radius standing still by rule", "m", "mm",
      "6·outer_diameter; a ribbon: 3·thickness; as shipped, data file cables", kRule, kDiameter},
     Axes::both,
     still_rule,
     true},
};

}  // namespace

std::span<const FigureRow> cable_figures() { return kCableFigures; }

}  // namespace gazewright
