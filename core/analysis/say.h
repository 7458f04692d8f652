#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gazewright {

/// A value as a sentence says it: three significant digits, decimal point, pretty unit: "148 ms",
/// "16.1 N·m", "-12.5°", "none".
std::string say(double value_si, std::string_view si_unit, std::string_view unit);
/// "24 %" for 0.241.
std::string say_percent(double part);
/// "needs pan.motor.mass, supply.voltage".
std::string say_needs(const std::vector<std::string>& missing);

}  // namespace gazewright
