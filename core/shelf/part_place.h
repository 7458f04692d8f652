#pragma once

#include "core/shelf/part.h"

/// Where a part of the shelf stands in a rig. Used by core/shelf and core/files only.
namespace gazewright {

inline Motor& place_in(Rig& rig, Axis axis, const Motor&) { return rig.axis(axis).motor; }
inline Gearbox& place_in(Rig& rig, Axis axis, const Gearbox&) { return rig.axis(axis).gearbox; }
inline Drive& place_in(Rig& rig, Axis axis, const Drive&) { return rig.axis(axis).drive; }
inline Bearing& place_in(Rig& rig, Axis axis, const Bearing&) { return rig.axis(axis).bearing; }
inline Cable& place_in(Rig& rig, Axis axis, const Cable&) { return rig.axis(axis).cable; }
inline Camera& place_in(Rig& rig, Axis, const Camera&) { return rig.camera; }
inline Supply& place_in(Rig& rig, Axis, const Supply&) { return rig.supply; }

/// The empty fields of a kind.
inline ShelfPart::Fields fields_of(PartKind kind) {
  switch (kind) {
    case PartKind::motor:
      return Motor{};
    case PartKind::gearbox:
      return Gearbox{};
    case PartKind::drive:
      return Drive{};
    case PartKind::bearing:
      return Bearing{};
    case PartKind::cable:
      return Cable{};
    case PartKind::camera:
      return Camera{};
    case PartKind::supply:
      return Supply{};
  }
  return Motor{};
}

}  // namespace gazewright
