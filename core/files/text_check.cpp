#include "core/files/text_check.h"

#include <array>

#include "core/words/words.h"

namespace gazewright {
namespace {

unsigned byte_at(std::string_view text, std::size_t i) {
  return i < text.size() ? static_cast<unsigned char>(text[i]) : 0;
}
bool is_continuation(std::string_view text, std::size_t i) {
  return (byte_at(text, i) & 0xC0) == 0x80;
}

/// Length of the UTF-8 sequence at i, or 0 where there is none: no overlong forms, no surrogates,
/// nothing beyond U+10FFFF. Source: RFC 3629, section 4.
std::size_t utf8_length(std::string_view text, std::size_t i) {
  const unsigned first = byte_at(text, i), second = byte_at(text, i + 1);
  if (first < 0x80) return 1;
  if (first >= 0xC2 && first <= 0xDF) return is_continuation(text, i + 1) ? 2 : 0;
  if (first >= 0xE0 && first <= 0xEF) {
    const bool is_valid = (first != 0xE0 || second >= 0xA0) && (first != 0xED || second < 0xA0);
    return is_valid && is_continuation(text, i + 1) && is_continuation(text, i + 2) ? 3 : 0;
  }
  if (first >= 0xF0 && first <= 0xF4) {
    const bool is_valid = (first != 0xF0 || second >= 0x90) && (first != 0xF4 || second < 0x90);
    return is_valid && is_continuation(text, i + 1) && is_continuation(text, i + 2) &&
                   is_continuation(text, i + 3)
               ? 4
               : 0;
  }
  return 0;
}

bool is_forbidden_control(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return (byte < 0x20 && c != '\n' && c != '\r' && c != '\t') || byte == 0x7f;
}

}  // namespace

std::optional<Fault> check_text(std::string_view text) {
  if (text.size() > kLargestFile_bytes)
    return Fault{0, words("the file is larger than 1 MiB"),
                 words("a rig takes a few kilobytes; choose another file")};
  for (std::size_t i = 0; i < text.size();) {
    if (text[i] == '\0')
      return Fault{i, words("the file holds a NUL byte; it is not text"),
                   words("choose a rig file, or save it as UTF-8 text")};
    if (is_forbidden_control(text[i]))
      return Fault{i, words("the file holds a control character"),
                   words("remove it in a text editor")};
    const std::size_t length = utf8_length(text, i);
    if (length == 0)
      return Fault{i, words("the file is not UTF-8 text from here on"),
                   words("save it as UTF-8 in a text editor")};
    i += length;
  }
  return std::nullopt;
}

}  // namespace gazewright
