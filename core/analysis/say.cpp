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

constexpr const char* kMinus = "−";

/// "×10⁷" for what std::to_chars writes as "e+07".
std::string power_of_ten(std::string_view exponent) {
  constexpr std::array<const char*, 10> kRaised{"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};
  std::string text = "×10";
  if (exponent.starts_with('-')) text += "⁻";
  exponent.remove_prefix(std::min(exponent.find_first_not_of("+-0"), exponent.size()));
  for (const char c : exponent) text += kRaised[static_cast<std::size_t>(c - '0')];
  return text;
}

/// Three significant digits without exponent where that stays readable; a true minus.
std::string digits(double value) {
  if (std::abs(value) < kDust) return "0";
  const int magnitude = static_cast<int>(std::floor(std::log10(std::abs(value))));
  const bool plain = magnitude >= -4 && magnitude <= 6;
  const int decimals = plain ? std::max(0, 2 - magnitude) : 2;
  std::array<char, 64> text{};
  const auto end =
      std::to_chars(text.data(), text.data() + text.size(), value,
                    plain ? std::chars_format::fixed : std::chars_format::scientific, decimals);
  std::string out(text.data(), end.ptr), power;
  if (const auto at = out.find('e'); at != std::string::npos) {
    power = power_of_ten(std::string_view(out).substr(at + 1));
    out.erase(at);
  }
  if (out.find('.') != std::string::npos) {
    out.erase(out.find_last_not_of('0') + 1);
    if (out.back() == '.') out.pop_back();
  }
  out += power;
  if (const auto point = out.find('.'); point != std::string::npos)
    out.replace(point, 1, the_decimal_mark());
  if (out.starts_with('-')) out.replace(0, 1, kMinus);
  return out;
}

}  // namespace

void use_decimal_mark(std::string_view mark) { the_decimal_mark() = mark; }

std::string say(double value_si, std::string_view si_unit, std::string_view unit) {
  if (std::isinf(value_si)) return "none";
  if (unit == "1" || unit.empty()) return digits(value_si);
  const double value = unit == si_unit ? value_si : from_si(value_si, si_unit, unit);
  if (unit == "h" && value > kLongestLife_h) return words("more than 10⁶ h");
  const bool in_thousands = std::abs(value) >= 1e4 && (unit == "J" || unit == "W" || unit == "N");
  const std::string shown = (in_thousands ? "k" : "") + pretty_unit(unit);
  const std::string number = digits(in_thousands ? value / 1e3 : value);
  return shown == "°" ? number + shown : number + " " + shown;
}

std::string say_percent(double part) { return digits(std::round(100 * part)) + " %"; }

std::string say_needs(std::span<const std::string> missing, std::size_t most) {
  const std::size_t named = most == 0 ? missing.size() : std::min(most, missing.size());
  std::string text;
  for (const std::string& path : missing.first(named))
    text += (text.empty() ? words("needs ") : ", ") + path;
  if (named < missing.size()) text += words(" and %1 more", std::to_string(missing.size() - named));
  return text;
}

}  // namespace gazewright
