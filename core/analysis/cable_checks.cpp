#include <cmath>

#include "core/analysis/cable_words.h"
#include "core/analysis/checks.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/analysis/travel_words.h"
#include "core/travel/cable_twist.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

using Outcome = Compared::Outcome;
constexpr auto kCableAndStops = joined(kStopGeometry, kCableTravel);
constexpr InputPath kBend[]{"<axis>.cable.<bend>", "<axis>.cable.bend_radius"};
constexpr InputPath kRule[]{"<axis>.cable.outer_diameter", "<axis>.cable.bend_radius"};
constexpr InputPath kSlack[]{"<axis>.cable.<bend>", "<axis>.cable.slack"};

Compared lasts_to_stops(Context& c, Axis a) {
  const Cable& cable = c.rig().axis(a).cable;
  const Travel& travel = c.travel(a);
  if (has_no_cable(cable)) return absent();
  if (!travel.cable_rad) {
    return {travel.stops_rad, std::nullopt, why_no_cable_travel(cable), Outcome::impossible};
  }
  if (std::isinf(*travel.cable_rad)) return moot(words("a slip ring turns without end"));
  if (!travel.stops_rad) return {std::nullopt, travel.cable_rad, why_no_travel(c, a)};
  if (std::isinf(*travel.stops_rad)) {
    return {std::nullopt, *travel.cable_rad, words("a cable crosses an axis that has no stops"),
            Outcome::impossible};
  }
  return {
      *travel.stops_rad, *travel.cable_rad,
      words("the stops let it turn ±%1, the cable ±%2", say(*travel.stops_rad / 2, "rad", "deg"),
            say(*travel.cable_rad / 2, "rad", "deg"))};
}

Compared bends_wide_enough(Context& c, Axis a) {
  const Cable& cable = c.rig().axis(a).cable;
  if (has_no_cable(cable)) return absent();
  const TightestBend bend = tightest_bend_of(c, a);
  const double needed_m = cable.bend_radius_m.value();
  if (!bend.radius_m) return {needed_m, std::nullopt, bend.where, Outcome::impossible};
  if (std::isinf(*bend.radius_m)) return moot(bend.where);
  return {needed_m, *bend.radius_m,
          words("%1; how many bends it lives through is for its maker to say", words(bend.where))};
}

Compared bend_radius_by_rule(Context& c, Axis a) {
  const Cable& cable = c.rig().axis(a).cable;
  if (has_no_cable(cable)) return absent();
  if (routing_of(cable) == Routing::slip_ring) return absent();
  const Quantity& bears = cable.bend_radius_m;
  const double lasting_m = lasting_bend_m(cable);
  const bool to_look_up = bears.value() < lasting_m && bears.source != Source::datasheet;
  return {still_bend_m(cable), bears.value(),
          to_look_up
              ? words("the rule for a bend that stands still; one that moves all its life wants %1 "
                      "unless its maker says less: look up the radius for moving bends and enter "
                      "it as the data sheet's",
                      say(lasting_m, "m", "mm"))
              : words("the rule for a bend that stands still; one that moves all its life wants %1 "
                      "unless its maker says less",
                      say(lasting_m, "m", "mm")),
          to_look_up ? Outcome::doubtful : Outcome::by_numbers};
}

Compared slack_for_twist(Context& c, Axis a) {
  const Cable& cable = c.rig().axis(a).cable;
  if (has_no_cable(cable)) return absent();
  if (routing_of(cable) != Routing::twist) return absent();
  const double slack_m = cable.slack_m.value(), length_m = cable.free_length_m.value();
  const auto twist = twist_each_way_rad(c, a);
  if (!twist) return {std::nullopt, slack_m, kOffUsable};
  const auto needed_m = helix_shortening_m(cable.lay_radius_m.value(), *twist, length_m);
  if (!needed_m) return {std::nullopt, slack_m, kWoundFlat, Outcome::impossible};
  if (slack_m >= length_m) {
    return {*needed_m, slack_m, words("with so much slack the clamps would touch"),
            Outcome::impossible};
  }
  return {*needed_m, slack_m,
          words("twisted ±%1, the outermost cable lies %2 from the axis", say(*twist, "rad", "deg"),
                say(cable.lay_radius_m.value(), "m", "mm"))};
}

constexpr Lever kTravelLevers[] = {
    {"<axis>.cable.free_length", Way::up, 10},    {"<axis>.cable.free_length", Way::down, 5},
    {"<axis>.stops.tab_width", Way::up, 20},      {"<axis>.cable.twist_rating", Way::up, 10},
    {"<axis>.cable.wall_radius", Way::up, 5},     {"<axis>.cable.hub_radius", Way::down, 5},
    {"<axis>.cable.moving_radius", Way::down, 5}, {"<axis>.cable.anchor_radius", Way::down, 5}};
constexpr Lever kBendLevers[] = {
    {"<axis>.cable.free_length", Way::up, 10},   {"<axis>.cable.lay_radius", Way::down, 20},
    {"<axis>.cable.hub_radius", Way::up, 10},    {"<axis>.cable.anchor_radius", Way::up, 10},
    {"<axis>.cable.moving_radius", Way::up, 10}, {"<axis>.cable.bend_radius", Way::down, 10}};
constexpr Lever kRuleLevers[] = {{"<axis>.cable.bend_radius", Way::up, 10},
                                 {"<axis>.cable.outer_diameter", Way::down, 10}};
constexpr Lever kSlackLevers[] = {{"<axis>.cable.slack", Way::up, 100},
                                  {"<axis>.cable.slack", Way::down, 100},
                                  {"<axis>.cable.free_length", Way::up, 10},
                                  {"<axis>.cable.lay_radius", Way::down, 20}};

constexpr Check kCableChecks[] = {
    {"<axis>.travel.cable", "Cable lasts to the stops", "would let the stop come before the cable",
     "<axis>.cable", "rad", "deg", kCableAndStops, lasts_to_stops, kTravelLevers},
    {"<axis>.cable.bend", "Cable bends wide enough", "would bend the cable wide enough",
     "<axis>.cable", "m", "mm", kBend, bends_wide_enough, kBendLevers, nullptr,
     "<axis>.cable.bend_radius"},
    {"<axis>.cable.bend_rule", "Bend radius against the rule", "would keep to the rule",
     "<axis>.cable", "m", "mm", kRule, bend_radius_by_rule, kRuleLevers, nullptr,
     "<axis>.cable.bend_radius"},
    {"<axis>.cable.slack", "Slack for the twist", "would leave slack enough", "<axis>.cable", "m",
     "mm", kSlack, slack_for_twist, kSlackLevers, nullptr, "<axis>.cable.slack"},
};

}  // namespace

std::span<const Check> cable_checks() { return kCableChecks; }

}  // namespace gazewright
