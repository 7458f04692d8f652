#include <algorithm>
#include <cstdint>

#include "app/batch/output.h"

namespace gazewright::batch {
namespace {

bool is_control(unsigned char c) { return c < 0x20 || c == 0x7f; }

/// Length of the well-formed UTF-8 sequence at the front (RFC 3629), or 0 where there is none.
std::size_t sequence_length(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char lead = byte(0);
  const std::size_t length = lead < 0x80                   ? 1
                             : lead >= 0xc2 && lead < 0xe0 ? 2
                             : lead >= 0xe0 && lead < 0xf0 ? 3
                             : lead >= 0xf0 && lead < 0xf5 ? 4
                                                           : 0;
  if (length == 0 || text.size() < length) return 0;
  for (std::size_t i = 1; i < length; ++i)
    if ((byte(i) & 0xc0) != 0x80) return 0;
  // Overlong forms, surrogates and what lies beyond U+10FFFF.
  if ((lead == 0xe0 && byte(1) < 0xa0) || (lead == 0xed && byte(1) > 0x9f) ||
      (lead == 0xf0 && byte(1) < 0x90) || (lead == 0xf4 && byte(1) > 0x8f))
    return 0;
  return length;
}

std::string escaped(unsigned char c) {
  switch (c) {
    case '"':
      return "\\\"";
    case '\\':
      return "\\\\";
    case '\n':
      return "\\n";
    case '\r':
      return "\\r";
    case '\t':
      return "\\t";
    default:
      break;
  }
  static constexpr char kHex[] = "0123456789abcdef";
  return std::string("\\u00") + kHex[c >> 4] + kHex[c & 15];
}

}  // namespace

std::string json_string(std::string_view text) {
  std::string out = "\"";
  while (!text.empty()) {
    const auto c = static_cast<unsigned char>(text[0]);
    const std::size_t length = sequence_length(text);
    if (length == 0)
      out += "\xef\xbf\xbd";
    else if (is_control(c) || c == '"' || c == '\\')
      out += escaped(c);
    else
      out += text.substr(0, length);
    text.remove_prefix(length == 0 ? 1 : length);
  }
  return out + '"';
}

std::string csv_field(std::string_view text) {
  if (text.find_first_of(",\"\r\n") == std::string_view::npos) return std::string(text);
  std::string out = "\"";
  for (const char c : text) out += c == '"' ? std::string("\"\"") : std::string(1, c);
  return out + '"';
}

std::string json_or_null(const std::string& text) {
  return text.empty() ? "null" : json_string(text);
}
std::string json_or_null(const std::optional<double>& value) {
  return value ? number(*value) : "null";
}

std::string one_line(std::string_view text) {
  std::string out(text);
  for (char& c : out)
    if (is_control(static_cast<unsigned char>(c))) c = ' ';
  return out;
}

std::size_t width(std::string_view text) {
  std::size_t columns = 0;
  for (const char c : text) columns += (static_cast<unsigned char>(c) & 0xc0) != 0x80;
  return columns;
}

std::string padded(std::string_view text, std::size_t columns) {
  const std::size_t has = width(text);
  return std::string(text) + std::string(has < columns ? columns - has : 0, ' ');
}
std::string padded_left(std::string_view text, std::size_t columns) {
  const std::size_t has = width(text);
  return std::string(has < columns ? columns - has : 0, ' ') + std::string(text);
}

std::string in_columns(const Lines& lines) {
  std::vector<std::size_t> widths;
  for (const auto& line : lines) {
    widths.resize(std::max(widths.size(), line.size()));
    for (std::size_t i = 0; i + 1 < line.size(); ++i)
      widths[i] = std::max(widths[i], width(line[i]));
  }
  std::string text;
  for (const auto& line : lines) {
    std::string row = " ";
    for (std::size_t i = 0; i < line.size(); ++i)
      row += " " + (i + 1 < line.size() ? padded(line[i], widths[i]) + " " : line[i]);
    text += row.substr(0, row.find_last_not_of(' ') + 1) + '\n';
  }
  return text;
}

}  // namespace gazewright::batch
