#pragma once

#include <optional>
#include <string>
#include <string_view>

/// Text of units as people write it, brought to what UDUNITS-2 reads. Used by core/units only.
namespace gazewright {

/// The signs people type or paste brought to ASCII: "−" and "·", "²", "µ", "Ω", "°", no-break
/// spaces; the ends trimmed. What is not known stays as it is.
std::string in_ascii(std::string_view text);

/// A unit in ASCII as UDUNITS-2 text with our aliases put in: "Nm" -> "(N.m)", "deg" ->
/// "(arc_degree)", "oz" -> the ounce of mass. Empty where it has signs, numbers or a length that no
/// unit of ours needs (so that nothing odd reaches the library's parser).
std::optional<std::string> udunits_text(std::string_view ascii_unit);

/// Whether a unit holds this word: has_word("rad/Hz", "Hz").
bool has_word(std::string_view ascii_unit, std::string_view word);

struct NumberAndUnit {
  double number = 0;  ///< may be infinite or NaN when written so, or too large
  std::string_view number_text, unit;
};
/// "24V" -> 24 and "V". Empty where the text does not begin with a number. Point as decimal sign.
/// @param ascii  must outlive the result.
std::optional<NumberAndUnit> split_number(std::string_view ascii);

}  // namespace gazewright
