#pragma once

#include <string>
#include <string_view>

namespace gazewright {

/// A value as a sentence says it: three significant digits, decimal point, pretty unit: "148 ms",
/// "16.1 N·m", "-12.5°", "none".
std::string say(double value_si, std::string_view si_unit, std::string_view unit);

}  // namespace gazewright
