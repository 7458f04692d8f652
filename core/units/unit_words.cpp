#include "core/units/unit_words.h"

#include <utility>

#include "core/units/unit_system.h"
#include "core/units/units.h"

namespace gazewright {
namespace {

using Named = std::pair<std::string_view, std::string_view>;

// The first of two with one dimension names it (a torque, not an energy; a frequency, not a rate).
constexpr Named kDimensions[]{
    {"V", "a voltage"},
    {"A", "a current"},
    {"F", "a capacitance"},
    {"H", "an inductance"},
    {"ohm", "a resistance"},
    {"K", "a temperature"},
    {"rad", "an angle"},
    {"kg", "a mass"},
    {"m", "a length"},
    {"s", "a time"},
    {"Hz", "a frequency"},
    {"1/s", "a rate"},
    {"rad/s", "an angular speed"},
    {"N.m", "a torque"},
    {"N.m/rad", "a torque per angle"},
    {"N.m.s/rad", "a torque per angular speed"},
    {"kg.m2", "an inertia"},
    {"K/W", "a temperature rise per power"},
    {"rad/m", "an angle per length"},
    {"rad/s/V", "an angular speed per voltage"},
    {"1", "a plain number"},
    {"m/s", "a speed along a line"},
    {"N", "a force"},
    {"W", "a power"},
    {"kg.m", "a mass times a length"},
    {"m2", "an area"},
    {"m3", "a volume"},
    {"N/m", "a force per length"},
    {"C", "an electric charge"},
    {"Pa", "a pressure"},
};

std::string_view superscript(char c) {
  constexpr std::string_view kDigits[]{"\u2070", "\u00b9", "\u00b2", "\u00b3", "\u2074",
                                       "\u2075", "\u2076", "\u2077", "\u2078", "\u2079"};
  return kDigits[c - '0'];
}

std::string pretty_word(std::string_view word) {
  if (word == "deg") return "\u00b0";
  if (word == "degC") return "\u00b0C";
  if (word == "degF") return "\u00b0F";
  if (word == "hour") return "h";
  std::string pretty(word);
  if (pretty.ends_with("ohm")) pretty.replace(pretty.size() - 3, 3, "\u03a9");
  if (pretty.size() > 1 && pretty.front() == 'u') pretty.replace(0, 1, "\u00b5");
  return pretty;
}

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_'; }

}  // namespace

std::string_view dimension_words(std::string_view si_unit) {
  for (const auto& [unit, words] : kDimensions)
    if (unit == si_unit) return words;
  return "another kind of quantity";
}

std::string_view words_of_dimension(std::string_view dimension) {
  for (const auto& [unit, words] : kDimensions)
    if (const auto facts = find_unit(unit); facts && facts->dimension == dimension) return words;
  return "";
}

std::string pretty_unit(std::string_view unit) {
  if (unit == "1") return "";
  std::string pretty;
  for (std::size_t i = 0; i < unit.size();) {
    const char c = unit[i];
    if (is_letter(c)) {
      std::size_t end = i;
      while (end < unit.size() && is_letter(unit[end])) ++end;
      pretty += pretty_word(unit.substr(i, end - i));
      i = end;
      continue;
    }
    const bool is_exponent = i > 0 && (is_letter(unit[i - 1]) || unit[i - 1] == '^' ||
                                       unit[i - 1] == '-' || unit[i - 1] == ')');
    const bool is_sign = c == '-' && i + 1 < unit.size() && is_digit(unit[i + 1]);
    if (is_digit(c) && is_exponent)
      pretty += superscript(c);
    else if (is_sign)
      pretty += "\u207b";
    else if (c == '.' || c == '*' || c == '-')
      pretty += "\u00b7";
    else if (c != '^')
      pretty += c;
    ++i;
  }
  return pretty;
}

}  // namespace gazewright
