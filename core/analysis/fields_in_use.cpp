#include "core/analysis/fields_in_use.h"

#include "core/analysis/inputs.h"
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

Fields travel_fields(Routing routing) {
  switch (routing) {
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

Fields bend_fields(Routing routing) {
  switch (routing) {
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

}  // namespace

std::optional<Fields> fields_in_use(std::string_view path, const AxisParts& parts) {
  const bool travel = path.ends_with(".cable.<travel>"), bend = path.ends_with(".cable.<bend>");
  if (!travel && !bend) return std::nullopt;
  if (parts.cable.presence == Presence::none) return Fields{};
  const Routing routing = routing_of(parts.cable);
  return travel ? travel_fields(routing) : bend_fields(routing);
}

}  // namespace gazewright
