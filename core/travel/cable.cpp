#include "core/travel/cable.h"

#include <algorithm>
#include <initializer_list>
#include <numbers>

namespace gazewright {
namespace {

bool all_there(std::initializer_list<const Quantity*> quantities) {
  for (const Quantity* quantity : quantities)
    if (!quantity->has_value()) return false;
  return true;
}

bool has_lengths(const Cable& c) {
  switch (routing_of(c)) {
    case Routing::twist:
      return all_there({&c.twist_rating_radpm, &c.free_length_m});
    case Routing::coil:
      return all_there({&c.free_length_m, &c.hub_radius_m, &c.wall_radius_m, &c.thickness_m});
    case Routing::loop:
      return all_there(
          {&c.free_length_m, &c.bend_radius_m, &c.anchor_radius_m, &c.moving_radius_m});
    case Routing::slip_ring:
      return true;
  }
  return false;
}

}  // namespace

Routing routing_of(const Cable& cable) {
  if (cable.routing.value == "coil") return Routing::coil;
  if (cable.routing.value == "loop") return Routing::loop;
  if (cable.routing.value == "slip_ring") return Routing::slip_ring;
  return Routing::twist;
}

Coil coil_of(const Cable& cable) {
  return {cable.free_length_m.value(), cable.hub_radius_m.value(), cable.wall_radius_m.value(),
          cable.thickness_m.value()};
}

HangingLoop loop_of(const Cable& cable) {
  return {cable.free_length_m.value(), cable.bend_radius_m.value(), cable.anchor_radius_m.value(),
          cable.moving_radius_m.value()};
}

namespace {

constexpr double kShortest_m = 1e-5, kLongest_m = 100;  // of lengths that are set

/// Half of the room filled gives the most travel.
LengthRange lengths_of(const Coil& coil) {
  const double full_m = coil.length_m / coil_fill(coil);
  if (coil.length_m > full_m / 2) return {full_m / 2, full_m, false};
  return {std::min(kShortest_m, full_m / 4), full_m / 2, true};
}

/// From half a turn at the bend radius, or just not taut in the middle, to reaching across.
LengthRange lengths_of(const HangingLoop& loop) {
  const double bent_m = loop.length_m - loop_reach_m(loop);
  return {std::max(std::numbers::pi * loop.bend_radius_m, loop_gap_m(loop) + bent_m),
          loop.anchor_radius_m + loop.moving_radius_m + bent_m, true};
}

}  // namespace

std::optional<LengthRange> lengths_that_move(const Cable& cable) {
  const auto travel_rad = cable_travel_rad(cable);
  if (!travel_rad || cable.presence == Presence::none) return {};
  LengthRange range{kShortest_m, kLongest_m, true};
  switch (routing_of(cable)) {
    case Routing::twist:
      break;
    case Routing::coil:
      range = lengths_of(coil_of(cable));
      break;
    case Routing::loop:
      range = lengths_of(loop_of(cable));
      break;
    case Routing::slip_ring:
      return {};
  }
  if (!(range.most_m > range.least_m)) return {};
  return range;
}

double twist_travel_rad(double twist_rating_radpm, double free_length_m) {
  return 2 * twist_rating_radpm * free_length_m;
}

const char* why_no_cable_travel(const Cable& cable) {
  if (cable.presence == Presence::none || !has_lengths(cable)) return "";
  if (routing_of(cable) == Routing::coil) return coil_problem(coil_of(cable));
  if (routing_of(cable) == Routing::loop) return loop_problem(loop_of(cable));
  return "";
}

std::optional<double> cable_travel_rad(const Cable& cable) {
  if (cable.presence == Presence::none) return kInfinity;
  if (!has_lengths(cable) || *why_no_cable_travel(cable) != '\0') return {};
  switch (routing_of(cable)) {
    case Routing::twist:
      return twist_travel_rad(*cable.twist_rating_radpm.si, *cable.free_length_m.si);
    case Routing::coil:
      return coil_travel_rad(coil_of(cable));
    case Routing::loop:
      return loop_travel_rad(loop_of(cable));
    case Routing::slip_ring:
      return kInfinity;
  }
  return {};
}

}  // namespace gazewright
