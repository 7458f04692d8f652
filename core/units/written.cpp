#include <array>
#include <charconv>
#include <cmath>

#include "core/units/conversion.h"
#include "core/units/unit_text.h"
#include "core/units/units.h"

namespace gazewright {

std::string unit_of_written(std::string_view written) {
  const std::string ascii = in_ascii(written);
  const auto found = split_number(ascii);
  return found ? std::string(found->unit) : "";
}

std::string written_quantity(double value_si, const FieldInfo& info, std::string_view unit) {
  if (std::isinf(value_si) && value_si > 0) return "none";
  const std::string ascii = in_ascii(unit);
  const bool is_bare = info.is_plain_number() && (ascii.empty() || ascii == "1" || ascii == "px");
  auto how = is_bare ? Conversion{} : conversion(ascii, info.si_unit);
  const std::string suffix =
      is_bare ? "" : " " + (how ? std::string(unit) : std::string(info.unit));
  if (!how) how = conversion(info.unit, info.si_unit);
  if (!how) return "";
  const double value = how->from_si(value_si);
  const auto format = std::abs(value) >= 1e-6 && std::abs(value) < 1e15
                          ? std::chars_format::fixed
                          : std::chars_format::scientific;
  std::array<char, 64> digits{};
  for (int precision = 0; precision <= 16; ++precision) {
    auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value,
                             std::chars_format::scientific, precision);
    double rounded = 0;
    std::from_chars(digits.data(), end.ptr, rounded);
    if (std::abs(how->to_si(rounded) - value_si) > 1e-12 * std::abs(value_si) && precision < 16)
      continue;
    if (rounded == 0) return "0" + suffix;
    end = std::to_chars(digits.data(), digits.data() + digits.size(), rounded, format);
    return std::string(digits.data(), end.ptr) + suffix;
  }
  return "";
}

}  // namespace gazewright
