#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace gazewright {

/// A longer life is only said to be longer.
inline constexpr double kLongestLife_h = 1e6;
/// Less, in the unit that is shown, is what rounding leaves of 0.
inline constexpr double kDust = 1e-9;

/// What stands between whole numbers and decimals in sentences; a point until the window says what
/// is usual at the desktop. To be called before anything is analysed.
void use_decimal_mark(std::string_view mark);

/// A value as a sentence says it: three significant digits, decimal mark, pretty unit: "148 ms",
/// "16.1 N·m", "−12.5°", "none".
std::string say(double value_si, std::string_view si_unit, std::string_view unit);
/// "24 %" for 0.241.
std::string say_percent(double part);

/// What is missing, as a reason: "needs pan.gearbox.drag, pan.stops and 2 more"; nothing missing is
/// an empty text. @param most  how many are named before the rest is counted; 0: all of them.
std::string say_needs(std::span<const std::string> missing, std::size_t most = 0);

}  // namespace gazewright
