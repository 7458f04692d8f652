#include "core/analysis/say.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "core/units/units.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

std::string& the_decimal_mark() {
  static std::string mark = ".";
  return mark;
}

/// Three significant digits without exponent where that stays readable.
std::string digits(double value) {
  if (value == 0) return "0";
  const int magnitude = static_cast<int>(std::floor(std::log10(std::abs(value))));
  const bool plain = magnitude >= -4 && magnitude <= 6;
  const int decimals = plain ? std::max(0, 2 - magnitude) : 2;
  std::array<char, 64> text{};
  const auto end =
      std::to_chars(text.data(), text.data() + text.size(), value,
                    plain ? std::chars_format::fixed : std::chars_format::scientific, decimals);
  std::string out(text.data(), end.ptr);
  if (plain && out.find('.') != std::string::npos) {
    out.erase(out.find_last_not_of('0') + 1);
    if (out.back() == '.') out.pop_back();
  }
  if (const auto point = out.find('.'); point != std::string::npos)
    out.replace(point, 1, the_decimal_mark());
  return out;
}

}  // namespace

void use_decimal_mark(std::string_view mark) { the_decimal_mark() = mark; }

std::string say(double value_si, std::string_view si_unit, std::string_view unit) {
  if (std::isinf(value_si)) return "none";
  if (unit == "1" || unit.empty()) return digits(value_si);
  const std::string shown = pretty_unit(unit);
  const std::string number = digits(unit == si_unit ? value_si : from_si(value_si, si_unit, unit));
  return shown == "°" ? number + shown : number + " " + shown;
}

std::string say_percent(double part) { return std::to_string(std::lround(100 * part)) + " %"; }

std::string say_needs(std::span<const std::string> missing, std::size_t most) {
  const std::size_t named = most == 0 ? missing.size() : std::min(most, missing.size());
  std::string text;
  for (const std::string& path : missing.first(named))
    text += (text.empty() ? words("needs ") : ", ") + path;
  if (named < missing.size()) text += words(" and %1 more", std::to_string(missing.size() - named));
  return text;
}

}  // namespace gazewright
