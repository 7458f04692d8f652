#include "core/analysis/cable_words.h"
#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/travel_words.h"

namespace gazewright {
namespace {

constexpr const char* kSource = "geometry; handbook: cables";
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

/// A figure that only one routing has.
Answer of_routing(Context& c, Axis a, Routing routing, const char* otherwise,
                  Answer (*compute)(Context&, Axis)) {
  const Cable& cable = cable_of(c, a);
  if (has_no_cable(cable)) return Answer::none(kNoCable);
  if (routing_of(cable) != routing) return Answer::none(otherwise);
  if (const char* why = why_no_cable_travel(cable); *why != '\0') return Answer::none(why);
  return compute(c, a);
}
constexpr const char* kNoTwist = "only a cable along the axis twists";
constexpr const char* kNoCoil = "the cable is not coiled";
constexpr const char* kNoLoop = "the cable hangs in no loop";

Answer bundle(Context& c, Axis a) {
  return of_routing(c, a, Routing::twist, kNoTwist, [](Context& c, Axis a) -> Answer {
    return 2 * cable_of(c, a).lay_radius_m.value() + cable_of(c, a).outer_diameter_m.value();
  });
}

Answer strain(Context& c, Axis a) {
  return of_routing(c, a, Routing::twist, kNoTwist, [](Context& c, Axis a) -> Answer {
    const auto twist = twist_each_way_rad(c, a);
    if (!twist) return Answer::none(kOffUsable);
    const Cable& cable = cable_of(c, a);
    return helix_strain(cable.lay_radius_m.value(), *twist, cable.free_length_m.value());
  });
}

Answer shortening(Context& c, Axis a) {
  return of_routing(c, a, Routing::twist, kNoTwist, [](Context& c, Axis a) -> Answer {
    const auto twist = twist_each_way_rad(c, a);
    if (!twist) return Answer::none(kOffUsable);
    const Cable& cable = cable_of(c, a);
    return {helix_shortening_m(cable.lay_radius_m.value(), *twist, cable.free_length_m.value()),
            kWoundFlat};
  });
}

Answer tightest_bend(Context& c, Axis a) {
  const Cable& cable = cable_of(c, a);
  if (has_no_cable(cable)) return Answer::none(kNoCable);
  const TightestBend bend = tightest_bend_of(c, a);
  return span(bend.radius_m, bend.where, bend.where);
}

Answer turns_on_hub(Context& c, Axis a) {
  return of_routing(c, a, Routing::coil, kNoCoil, [](Context& c, Axis a) -> Answer {
    return coil_turns_on_hub(coil_of(cable_of(c, a)));
  });
}

Answer turns_at_wall(Context& c, Axis a) {
  return of_routing(c, a, Routing::coil, kNoCoil, [](Context& c, Axis a) -> Answer {
    return coil_turns_at_wall(coil_of(cable_of(c, a)));
  });
}

Answer fill(Context& c, Axis a) {
  return of_routing(c, a, Routing::coil, kNoCoil, [](Context& c, Axis a) -> Answer {
    return coil_fill(coil_of(cable_of(c, a)));
  });
}

Answer depth(Context& c, Axis a) {
  return of_routing(c, a, Routing::loop, kNoLoop, [](Context& c, Axis a) -> Answer {
    return loop_depth_m(loop_of(cable_of(c, a)));
  });
}

Answer lasting_rule(Context& c, Axis a) {
  if (has_no_cable(cable_of(c, a))) return Answer::none(kNoCable);
  return kLastingBend * bent_thickness_m(cable_of(c, a));
}

Answer still_rule(Context& c, Axis a) {
  if (has_no_cable(cable_of(c, a))) return Answer::none(kNoCable);
  return still_bend_m(cable_of(c, a));
}

const FigureRow kRows[] = {
    {{"<axis>.travel.cable", "Travel the cable allows", "rad", "deg",
      "twist: 2·twist_rating·free_length; coil: 2π·(turns on the hub − turns at the wall); loop: "
      "2·acos((a² + ρ² − D²)/2aρ), D = L − (π − 2)·R",
      "twist rating by the cable's maker; else geometry; handbook: cables", kCableTravel},
     Axes::both,
     cable_travel},
    {{"<axis>.cable.bundle_diameter", "Diameter of the cable bundle", "m", "mm",
      "2·lay_radius + outer_diameter", kSource, kBundle},
     Axes::both,
     bundle},
    {{"<axis>.cable.strain", "Stretch of the outermost cable without slack", "1", "%",
      "√(1 + (lay_radius·usable/2/L)²) − 1", kSource, kBend},
     Axes::both,
     strain},
    {{"<axis>.cable.shortening", "Slack that the twist needs", "m", "mm",
      "L − √(L² − (lay_radius·usable/2)²)", kSource, kBend},
     Axes::both,
     shortening},
    {{"<axis>.cable.turns_on_hub", "Turns when wound tight", "1", "1", "(√(r_h² + L·t/π) − r_h)/t",
      kSource, kCableTravel},
     Axes::both,
     turns_on_hub},
    {{"<axis>.cable.turns_at_wall", "Turns when let out", "1", "1", "(r_w − √(r_w² − L·t/π))/t",
      kSource, kCableTravel},
     Axes::both,
     turns_at_wall},
    {{"<axis>.cable.fill", "Share of the coil's room that is filled", "1", "%",
      "L·t/(π·(r_w² − r_h²)); most travel at half", kSource, kCableTravel},
     Axes::both,
     fill},
    {{"<axis>.cable.hang", "How far the loop hangs down", "m", "mm",
      "(L − π·g/2)/2 + g/2, g = |a − ρ|", kSource, kCableTravel},
     Axes::both,
     depth},
    {{"<axis>.cable.tightest_bend", "Tightest bend of the cable", "m", "mm",
      "twist: L²/(lay_radius·(usable/2)²); coil: hub_radius; loop: |a − ρ|/2", kSource, kBend},
     Axes::both,
     tightest_bend},
    {{"<axis>.cable.bend_rule", "Bend radius for lasting use by rule", "m", "mm",
      "10·outer_diameter; a ribbon: 10·thickness", kRule, kDiameter},
     Axes::both,
     lasting_rule},
    {{"<axis>.cable.bend_rule_still", "Bend radius standing still by rule", "m", "mm",
      "6·outer_diameter; a ribbon: 3·thickness", kRule, kDiameter},
     Axes::both,
     still_rule},
};

}  // namespace

std::span<const FigureRow> cable_figures() { return kRows; }

}  // namespace gazewright
