#include "core/units/unit_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <limits>
#include <utility>

namespace gazewright {
namespace {

using Replacement = std::pair<std::string_view, std::string_view>;

// Longer signs first where one begins another.
constexpr Replacement kSigns[]{
    {"\u00b0C", "degC"},  {"\u00b0F", "degF"}, {"\u00b0", "deg"}, {"\u00b5", "u"},
    {"\u03bc", "u"},      {"\u03a9", "ohm"},   {"\u2126", "ohm"}, {"\u00b7", "."},
    {"\u22c5", "."},      {"\u00d7", "."},     {"\u2212", "-"},   {"\u00b9", "1"},
    {"\u00b2", "2"},      {"\u00b3", "3"},     {"\u2074", "4"},   {"\u207b", "-"},
    {"\u00a0", " "},      {"\u202f", " "},     {"\u2009", " "},   {"\u2032", "arcmin"},
    {"\u2033", "arcsec"},
};

// UDUNITS-2 knows no "deg" and no "rev", takes "oz" for a fluid ounce and "ozf" at six digits.
// 1 lb = 16 oz; international pound of 1959 as in NIST SP 811, appendix B.
constexpr Replacement kWords[]{
    {"deg", "(arc_degree)"}, {"Deg", "(arc_degree)"}, {"mdeg", "(0.001 arc_degree)"},
    {"rev", "(turn)"},       {"revs", "(turn)"},      {"RPM", "(rpm)"},
    {"oz", "(lb/16)"},       {"ozf", "(lbf/16)"},     {"px", "(1)"},
    {"pixel", "(1)"},        {"pixels", "(1)"},       {"Nm", "(N.m)"},
    {"mNm", "(mN.m)"},       {"uNm", "(uN.m)"},       {"kNm", "(kN.m)"},
    {"Ncm", "(N.cm)"},       {"Nmm", "(N.mm)"},       {"Nms", "(N.m.s)"},
    {"mNms", "(mN.m.s)"},    {"uNms", "(uN.m.s)"},    {"kgcm", "(kg.cm)"},
    {"kgfcm", "(kgf.cm)"},   {"gcm", "(g.cm)"},       {"ozin", "(lb.in/16)"},
    {"gcm2", "(g.cm2)"},     {"kgm2", "(kg.m2)"},     {"kgcm2", "(kg.cm2)"},
    {"gmm2", "(g.mm2)"},     {"kgmm2", "(kg.mm2)"},   {"KV", "(rpm/V)"},
};

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_'; }
bool is_digit(char c) { return c >= '0' && c <= '9'; }
char at_or_zero(std::string_view text, std::size_t i) { return i < text.size() ? text[i] : '\0'; }

std::string_view trimmed(std::string_view text) {
  const auto is_space = [](char c) { return c == ' ' || c == '\t'; };
  while (!text.empty() && is_space(text.front())) text.remove_prefix(1);
  while (!text.empty() && is_space(text.back())) text.remove_suffix(1);
  return text;
}

std::size_t end_of_letters(std::string_view text, std::size_t from) {
  while (from < text.size() && is_letter(text[from])) ++from;
  return from;
}

/// A digit may be an exponent of one figure ("m2", "s-1", "m^2") or the 1 of "1/s".
bool is_allowed_digit(std::string_view unit, std::size_t i) {
  if (unit == "1") return true;
  if (is_digit(at_or_zero(unit, i + 1))) return false;
  std::size_t before = i;  // one past the sign before the digit
  if (before > 0 && (unit[before - 1] == '-' || unit[before - 1] == '+')) --before;
  if (before > 0 && unit[before - 1] == '^') --before;
  if (before > 0 && (is_letter(unit[before - 1]) || unit[before - 1] == ')')) return true;
  const auto next = unit.find_first_not_of(' ', i + 1);
  const bool is_over = next != std::string_view::npos && unit[next] == '/';
  return unit[i] == '1' && is_over && (i == 0 || unit[i - 1] == '(');
}

bool has_matching_parentheses(std::string_view unit) {
  constexpr int kDeepest = 4;
  int depth = 0;
  for (char c : unit) {
    depth += c == '(' ? 1 : c == ')' ? -1 : 0;
    if (depth < 0 || depth > kDeepest) return false;
  }
  return depth == 0;
}

bool has_only_what_units_need(std::string_view unit) {
  constexpr std::size_t kLongest = 48;
  constexpr std::string_view kMarks = " .*/^-+()%'\"";
  if (unit.size() > kLongest) return false;
  for (std::size_t i = 0; i < unit.size(); ++i) {
    if (is_digit(unit[i]) ? !is_allowed_digit(unit, i)
                          : !is_letter(unit[i]) && kMarks.find(unit[i]) == std::string_view::npos)
      return false;
  }
  return has_matching_parentheses(unit);
}

std::optional<std::string_view> alias_of(std::string_view word) {
  for (const auto& [written, meant] : kWords)
    if (written == word) return meant;
  return std::nullopt;
}

}  // namespace

std::string in_ascii(std::string_view text) {
  std::string plain;
  while (!text.empty()) {
    const auto* sign =
        std::find_if(std::begin(kSigns), std::end(kSigns),
                     [&](const Replacement& s) { return text.starts_with(s.first); });
    const bool is_known = sign != std::end(kSigns);
    plain += is_known ? sign->second : text.substr(0, 1);
    text.remove_prefix(is_known ? sign->first.size() : 1);
  }
  return std::string(trimmed(plain));
}

std::optional<std::string> udunits_text(std::string_view unit) {
  if (!has_only_what_units_need(unit)) return std::nullopt;
  std::string text = unit.starts_with('/') ? "1" : "";  // "30/s"
  for (std::size_t i = 0; i < unit.size();) {
    if (!is_letter(unit[i])) {
      text += unit[i++];
      continue;
    }
    const std::size_t end = end_of_letters(unit, i);
    const std::string_view word = unit.substr(i, end - i);
    if (const auto inertia = alias_of(unit.substr(i, end - i + 1));
        inertia && is_digit(at_or_zero(unit, end))) {
      text += *inertia;
      i = end + 1;
      continue;
    }
    const auto alias = alias_of(word);
    text += alias ? *alias : word;
    i = end;
    const char next = at_or_zero(unit, i);
    const bool has_exponent =
        is_digit(next) || ((next == '-' || next == '+') && is_digit(at_or_zero(unit, i + 1)));
    if (alias && has_exponent) text += '^';
  }
  return text;
}

bool has_word(std::string_view unit, std::string_view word) {
  for (std::size_t i = 0; i < unit.size();) {
    const std::size_t end = end_of_letters(unit, i);
    if (unit.substr(i, end - i) == word) return true;
    i = std::max(end, i + 1);
  }
  return false;
}

std::optional<NumberAndUnit> split_number(std::string_view ascii) {
  std::string_view text = trimmed(ascii);
  const std::string_view whole = text;
  if (text.starts_with('+')) text.remove_prefix(1);
  if (text.empty() || is_letter(text.front()) ||
      (text.front() == '-' && text.size() > 1 && is_letter(text[1])))
    return std::nullopt;  // from_chars would read "inf" and "nan"
  NumberAndUnit found;
  const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), found.number);
  if (fault == std::errc::invalid_argument) return std::nullopt;
  const auto length = static_cast<std::size_t>(end - text.data());
  found.number_text = whole.substr(0, length + (whole.size() - text.size()));
  found.unit = trimmed(text.substr(length));
  if (fault == std::errc::result_out_of_range) {
    const bool is_small = found.number_text.find("e-") != std::string_view::npos ||
                          found.number_text.find("E-") != std::string_view::npos ||
                          found.number_text.find("0.0") != std::string_view::npos;
    found.number = is_small ? 0 : std::numeric_limits<double>::infinity();
  }
  return found;
}

}  // namespace gazewright
