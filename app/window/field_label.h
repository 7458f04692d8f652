#pragma once

#include <QString>

#include "core/rig/fields.h"

namespace gazewright {

/// "Rotor inertia"; for a coordinate or tensor element its letter is added: "Centre x".
QString field_label(const QuantityRef& field);

}  // namespace gazewright
