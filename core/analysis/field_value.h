#pragma once

#include <string>

#include "core/rig/fields.h"

/// Values of fields as remedies name them.
namespace gazewright {

/// `value_si` > 0 to this many significant digits in the field's unit, up or down. SI again.
double rounded_value(const FieldInfo& info, double value_si, bool up, int digits);

/// "pan gearbox ratio 14", "supply current limit 20 A".
std::string say_field(const std::string& path, const FieldInfo& info, double value_si);

/// How a remedy changes a field: to a value, or to it and on.
enum class Change { to, or_more, or_less, or_nearer_to_0 };

/// What to do: "pan gearbox ratio 14 or less". What a part is bought with nobody can set, so that
/// is a matter of another part: "another gearbox for pan (backlash 5 arcmin or less)".
std::string say_change(const std::string& path, const FieldInfo& info, double value_si,
                       Change change);
/// Whether a field is the property of something bought or built, not a setting or a size to choose.
bool is_bought(const std::string& path, Change change);

}  // namespace gazewright
