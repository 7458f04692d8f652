#pragma once

#include <vector>

#include "core/shelf/part.h"

/// Motors and gearboxes that the rig itself carries. A rig file lists what turns as bodies; those
/// called "tilt motor", "tilt gearbox" or "tilt motor and gearbox" (or pan's) stand for the part of
/// that name, and follow its mass where another one is put on.
namespace gazewright {

/// Whether any body stands for this part of the axis.
bool is_carried(const Rig& rig, Axis axis, PartKind kind);
/// Whether this body stands for a motor or gearbox of either axis.
bool stands_for_part(const Body& body);

/// Changes the mass of every body that stands for the part by what the new one weighs more; where
/// the old mass is not known, a body of that part alone gets the new mass. Shape and place stay.
/// Without a new mass the body's is missing: it is not known any more.
void carry_mass(Rig& rig, Axis axis, PartKind kind, const Quantity& old_mass,
                const Quantity& new_mass);

}  // namespace gazewright
