#include "core/units/units.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <numbers>

#include "core/rig/usual.h"
#include "core/units/conversion.h"
#include "core/units/unit_system.h"
#include "core/units/unit_text.h"
#include "core/units/unit_words.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

using Text = std::string;

/// A text of the user for a message: not longer than fits a line.
Text shown(std::string_view text) {
  constexpr std::size_t kLongest = 40;
  if (text.size() <= kLongest) return Text(text);
  std::size_t cut = kLongest;
  while (cut > 0 && (static_cast<unsigned char>(text[cut]) & 0xC0) == 0x80) --cut;  // whole letters
  return Text(text.substr(0, cut)) + "...";
}

Text due(const FieldInfo& info) { return words("%1 is due", words(dimension_words(info.si_unit))); }

Text example(std::string_view number, const FieldInfo& info) {
  const bool has_unit = !info.is_plain_number();
  return Text(words("write for example ")) + shown(number) +
         (has_unit ? " " + Text(info.unit) : "") + (info.may_be_none ? words(", or none") : "");
}

/// What a bare number was meant to be: in the SI unit where that is nearer to what is usual in the
/// field, else in the unit that the field is shown in.
Text bare_example(const NumberAndUnit& found, const FieldInfo& info) {
  const UsualRange* usual = usual_range(info);
  if (usual == nullptr || found.number == 0 || !std::isfinite(found.number) ||
      info.si_unit == info.unit)
    return example(found.number_text, info);
  const double shown_si = to_si(found.number, info.si_unit, info.unit);
  if (times_outside(*usual, found.number) >= times_outside(*usual, shown_si))
    return example(found.number_text, info);
  return words("write for example %1 %2 or %3", shown(found.number_text), info.si_unit,
               written_quantity(found.number, info, info.unit));
}

/// "1:10" of a gearbox as one number; empty where it is none. It slows down unless it says 1.
Text gear_ratio(const NumberAndUnit& found, const FieldInfo& info) {
  if (info.key != "ratio") return "";
  Text rest(found.unit);
  const std::size_t mark = rest.starts_with(':') ? 1 : rest.starts_with("to") ? 2 : 0;
  if (mark == 0) return "";
  std::ranges::replace(rest, ',', '.');
  const auto second = split_number(std::string_view(rest).substr(mark));
  if (!second || !second->unit.empty() || !(found.number > 0) || !(second->number > 0)) return "";
  const double ratio = found.number / second->number;
  if (!std::isfinite(ratio) || ratio == 0) return "";
  std::array<char, 32> digits{};
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(),
                                 std::max(ratio, 1 / ratio), std::chars_format::general, 6);
  return {digits.data(), end.ptr};
}

UnitProblem no_number(const Text& text, const FieldInfo& info) {
  constexpr std::string_view kNotNumbers[]{"nan",  "NaN",   ".nan", ".NaN", "inf",
                                           ".inf", "-.inf", "-inf", "+.inf"};
  for (const auto word : kNotNumbers)
    if (text == word || text.starts_with(Text(word) + " "))
      return {words("%1 is not a finite number; %2", shown(text), due(info)), example("1", info)};
  if (text == "none") return {words("none is not allowed here; %1", due(info)), example("1", info)};
  if (text.empty()) return {words("nothing is written; %1", due(info)), example("1", info)};
  return {words("\"%1\" does not begin with a number; %2", shown(text), due(info)),
          example("1", info)};
}

/// The value in the unit that was meant, for the two units that are often taken for each other.
Text frequency_hint(const FieldInfo& info, double number, const UnitFacts& facts) {
  const auto has = [&](std::string_view unit) {
    return find_unit(unit)->dimension == facts.dimension;
  };
  const auto near = [](double value) {
    std::array<char, 32> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value,
                                   std::chars_format::general, 6);
    return Text(digits.data(), end.ptr);
  };
  if (info.si_unit == "Hz" && has("rad/s"))
    return words("divide by 2\u03c0: %1 Hz", near(number * facts.scale / (2 * std::numbers::pi)));
  if (info.si_unit == "rad/s" && has("Hz"))
    return words("turns a second are %1 deg/s", near(number * facts.scale * 360));
  return "";
}

UnitProblem wrong_unit(const NumberAndUnit& found, const Text& text, const FieldInfo& info) {
  if (!has_unit_table())
    return {words("the table of units is missing"), words("install the package libudunits2-data")};
  const bool is_gauge = found.unit == "AWG" || found.unit == "awg";
  const auto facts = is_gauge ? find_unit("m") : find_unit(found.unit);
  if (!facts)
    return {words("the unit \"%1\" is not known; %2", shown(found.unit), due(info)),
            example(found.number_text, info)};
  if (info.si_unit == "1/s" && has_word(found.unit, "Hz"))
    return {words("%1 could mean turns or radians a second; %2", shown(text), due(info)),
            words("write it in 1/s, for a bandwidth 2\u03c0 times its Hz")};
  const std::string_view kind = words_of_dimension(facts->dimension);
  const Text problem =
      words("%1 is %2; %3", shown(text), words(kind.empty() ? "something else" : kind), due(info));
  if (const Text hint = frequency_hint(info, found.number, *facts); !hint.empty())
    return {problem, hint};
  if (info.is_torque() && facts->dimension == "m")
    return {problem, words("nm is a nanometre; %1", example(found.number_text, info))};
  if (info.unit == "rpm/V" && found.unit == "kV")
    return {problem, words("kV is a kilovolt; write %1 KV or %1 rpm/V", found.number_text)};
  return {problem, example(found.number_text, info)};
}

Text range_fix(const FieldInfo& info) {
  const auto said = [&](double si) { return written_quantity(si, info, info.unit); };
  const bool has_least = std::isfinite(info.least), has_most = std::isfinite(info.most);
  const Text kind = info.whole ? words("a whole number ") : words("a value ");
  const Text none = info.may_be_none ? words(", or none") : "";
  if (has_least && has_most)
    return words("write %1%2%3%4%5%6", kind, info.above_least ? words("above ") : words("from "),
                 said(info.least), info.above_least ? words(" and up to ") : words(" to "),
                 said(info.most), none);
  if (has_least)
    return words("write %1%2%3%4", kind, info.above_least ? words("above ") : words("of at least "),
                 said(info.least), none);
  return example("1", info);
}

/// "5,2 mm": where a comma stands where a decimal point is due, the text with the point.
Text with_point(const NumberAndUnit& found, const Text& text) {
  const bool has_comma = found.unit.size() > 1 && found.unit.front() == ',' &&
                         found.unit[1] >= '0' && found.unit[1] <= '9';
  if (!has_comma) return "";
  Text mended = text;
  mended[mended.find(',')] = '.';
  return mended;
}

std::variant<double, UnitProblem> read_si(const Text& text, const FieldInfo& info,
                                          bool is_difference) {
  const auto found = split_number(text);
  if (!found) return no_number(text, info);
  if (const Text mended = with_point(*found, text); !mended.empty())
    return UnitProblem{words("%1 has a comma in its number", shown(text)),
                       words("write %1", shown(mended))};
  const bool is_pixels = has_word(found->unit, "px") || has_word(found->unit, "pixels") ||
                         has_word(found->unit, "pixel");
  if (is_pixels && info.unit != "px")
    return UnitProblem{words("%1 is a number of pixels; %2", shown(text), due(info)),
                       example(found->number_text, info)};
  if (found->unit.empty() && !info.is_plain_number())
    return UnitProblem{words("%1 has no unit; %2", shown(text), due(info)),
                       bare_example(*found, info)};
  if (const Text ratio = gear_ratio(*found, info); !ratio.empty())
    return UnitProblem{words("%1 is two numbers; a ratio is one", shown(text)),
                       words("write %1: so many turns of the motor for one of the output", ratio)};
  const bool is_bare = found->unit.empty();
  auto how = is_bare ? Conversion{} : conversion(found->unit, info.si_unit);
  if (!how || found->unit == "1") return wrong_unit(*found, text, info);
  if (is_difference) how->offset = 0;
  const double value_si = how->to_si(found->number);
  if (!std::isfinite(value_si))
    return UnitProblem{words("%1 is not a finite number; %2", shown(text), due(info)),
                       range_fix(info), true};
  return value_si;
}

}  // namespace

std::variant<Quantity, UnitProblem> read_quantity(std::string_view text, const FieldInfo& info) {
  const Text ascii = in_ascii(text);
  Quantity quantity;
  quantity.written = Text(text.substr(0, text.find_last_not_of(" \t") + 1));
  quantity.written.erase(
      0, std::min(quantity.written.find_first_not_of(" \t"), quantity.written.size()));
  if (ascii == "none" && info.may_be_none) {
    quantity.si = kInfinity;
    return quantity;
  }
  const auto value = read_si(ascii, info, false);
  if (const auto* problem = std::get_if<UnitProblem>(&value)) return *problem;
  quantity.si = std::get<double>(value);
  const Text fault = range_problem(info, *quantity.si);
  if (!fault.empty()) return UnitProblem{fault, range_fix(info), true};
  return quantity;
}

std::variant<double, UnitProblem> read_spread(std::string_view text, const FieldInfo& info,
                                              double value_si) {
  Text ascii = in_ascii(text);
  if (ascii.starts_with("\u00b1")) ascii = in_ascii(std::string_view(ascii).substr(2));
  const UnitProblem negative{
      words("%1 is negative; a spread is the half-width of a range", shown(ascii)),
      words("write for example 10 %")};
  const auto found = split_number(ascii);
  if (found && found->number < 0) return negative;
  const bool is_temperature = info.unit == "degC";
  if (found && found->unit == "%" && is_temperature)
    return UnitProblem{words("a share of a temperature depends on where its scale begins"),
                       words("write for example 5 K")};
  if (found && found->unit == "%" && std::isfinite(found->number))
    return found->number / 100 * std::abs(value_si);
  auto value = read_si(ascii, info, true);
  if (auto* problem = std::get_if<UnitProblem>(&value))
    problem->fix = words(is_temperature ? "write for example 5 K" : "write for example 10 %");
  return value;
}

}  // namespace gazewright
