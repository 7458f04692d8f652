#pragma once

#include <string>

#include "core/rig/fields.h"

/// Values of fields as remedies name them.
namespace gazewright {

/// `value_si` > 0 to this many significant digits in the field's unit, up or down. SI again.
double rounded_value(const FieldInfo& info, double value_si, bool up, int digits);

/// "pan gearbox ratio 14", "supply current limit 20 A".
std::string say_field(const std::string& path, const FieldInfo& info, double value_si);

}  // namespace gazewright
