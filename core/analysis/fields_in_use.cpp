#include "core/analysis/fields_in_use.h"

#include <array>

#include "core/analysis/bearing_case.h"
#include "core/analysis/inputs.h"
#include "core/motion/cable_torque.h"
#include "core/travel/cable.h"

namespace gazewright {
namespace {

using Fields = std::span<const InputPath>;

constexpr InputPath kTwist[]{"<axis>.cable.twist_rating", "<axis>.cable.free_length"};
constexpr InputPath kCoil[]{"<axis>.cable.free_length", "<axis>.cable.hub_radius",
                            "<axis>.cable.wall_radius", "<axis>.cable.thickness"};
constexpr InputPath kClamps[]{"<axis>.cable.anchor_radius", "<axis>.cable.moving_radius"};
constexpr InputPath kLoop[]{"<axis>.cable.free_length", "<axis>.cable.bend_radius", kClamps[0],
                            kClamps[1]};
constexpr InputPath kHub[]{"<axis>.cable.hub_radius"};
constexpr auto kHelix = joined(kUsable, std::array<InputPath, 1>{"<axis>.cable.lay_radius"});

constexpr InputPath kLength[]{"<axis>.cable.free_length"};
constexpr std::array<InputPath, 4> kTab{"<axis>.stops.tab_width", "<axis>.stops.post_width",
                                        "<axis>.stops.radius", "<axis>.stops.centre"};
constexpr auto kTrailing =
    joined(kTab, std::array<InputPath, 2>{"<axis>.stops.trailers", "<axis>.stops.trailer_width"});
constexpr InputPath kWindow[]{"<axis>.stops.tab_width", "<axis>.stops.window",
                              "<axis>.stops.radius", "<axis>.stops.centre"};

Fields stop_fields(const Stops& stops) {
  if (stops.kind.value == "trailing") return kTrailing;
  if (stops.kind.value == "window") return kWindow;
  return kTab;
}

Fields travel_fields(const Cable& cable) {
  switch (routing_of(cable)) {
    case Routing::twist:
      return kTwist;
    case Routing::coil:
      return kCoil;
    case Routing::loop:
      return kLoop;
    case Routing::slip_ring:
      return {};
  }
  return {};
}

Fields bend_fields(const Cable& cable) {
  switch (routing_of(cable)) {
    case Routing::twist:
      return kHelix;
    case Routing::coil:
      return kHub;
    case Routing::loop:
      return kClamps;
    case Routing::slip_ring:
      return {};
  }
  return {};
}

Fields spring_fields(const Cable& cable) {
  if (is_spring(cable)) return kLength;
  return {};
}

/// The fastest that an axis turns, starts and brakes, its load apart.
constexpr auto kFastest =
    joined(joined(joined(kStall, kRotors), joined(kRigidExtras, kTopSpeed)),
           std::array<InputPath, 2>{"<axis>.friction.coulomb", "<axis>.loop.speed_limit"});
/// That of both axes, and the bodies: what bearings and joints carry.
constexpr InputPath kCarried[]{"pan.<fastest>",
                               "tilt.<fastest>",
                               "<load>",
                               "on_pan",
                               "on_tilt",
                               "tilt.axis_at",
                               "stand.lean",
                               "tilt.stops.<travel>",
                               "tilt.stops.soft_inset",
                               "tilt.cable.<travel>"};
constexpr InputPath kPairLoad[]{"<axis>.bearing.spacing", "<axis>.bearing.overhang",
                                "<axis>.bearing.static_rating"};
constexpr InputPath kSingleLoad[]{"<axis>.bearing.overhang", "<axis>.bearing.pitch_diameter",
                                  "<axis>.bearing.static_rating"};

Fields bearing_fields(const AxisParts& parts) {
  switch (carrier_of(parts)) {
    case Carrier::pair:
      return kPairLoad;
    case Carrier::single:
      return kSingleLoad;
    case Carrier::gearbox:
      return {};
  }
  return {};
}

struct Row {
  std::string_view ending;
  Fields (*of_cable)(const Cable&);
};
constexpr Row kCableRows[]{{".cable.<travel>", travel_fields},
                           {".cable.<bend>", bend_fields},
                           {".cable.<spring>", spring_fields}};

}  // namespace

std::optional<Fields> fields_in_use(std::string_view path, const AxisParts& parts) {
  if (path.ends_with(".stops.<travel>"))
    return parts.stops.presence == Presence::none ? Fields{} : stop_fields(parts.stops);
  if (path.ends_with(".bearing.<carried>")) return kCarried;
  if (path.ends_with(".<fastest>")) return kFastest;
  if (path.ends_with(".bearing.<load>")) return bearing_fields(parts);
  for (const Row& row : kCableRows) {
    if (!path.ends_with(row.ending)) continue;
    return parts.cable.presence == Presence::none ? Fields{} : row.of_cable(parts.cable);
  }
  return std::nullopt;
}

}  // namespace gazewright
