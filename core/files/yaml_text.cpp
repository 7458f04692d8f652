#include <array>
#include <string>

#include "core/files/yaml_tree.h"

namespace gazewright {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_word(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || is_digit(c); }

/// Letters of no meaning to YAML only, so that no reader can take it for anything else.
bool is_safe_plain(std::string_view text) {
  constexpr std::string_view kHarmless = " _.+-/%*()^";
  constexpr std::string_view kNulls[]{"null", "Null", "NULL"};
  if (text.empty() || text.back() == ' ') return false;
  for (const auto word : kNulls)
    if (text == word) return false;
  const bool is_signed =
      text.size() > 1 && (text[0] == '-' || text[0] == '+' || text[0] == '.') && is_digit(text[1]);
  if (!is_word(text.front()) && !is_signed) return false;
  for (char c : text)
    if (!is_word(c) && kHarmless.find(c) == std::string_view::npos) return false;
  return true;
}

std::string in_quotes(std::string_view text) {
  constexpr std::string_view kHex = "0123456789abcdef";
  std::string quoted = "\"";
  for (char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') {
      quoted += '\\';
      quoted += c;
    } else if (c == '\n') {
      quoted += "\\n";
    } else if (byte < 0x20 || byte == 0x7f) {
      quoted += "\\x";
      quoted += kHex[byte >> 4];
      quoted += kHex[byte & 15];
    } else {
      quoted += c;
    }
  }
  return quoted + "\"";
}

}  // namespace

std::size_t end_of_quoted(std::string_view text, std::size_t at) {
  const char quote = text[at];
  for (std::size_t i = at + 1; i < text.size(); ++i) {
    if (quote == '"' && text[i] == '\\') {
      ++i;
    } else if (text[i] == quote) {
      const bool is_doubled = quote == '\'' && i + 1 < text.size() && text[i + 1] == quote;
      if (!is_doubled) return i + 1;
      ++i;
    }
  }
  return std::string_view::npos;
}

std::string yaml_scalar(std::string_view text, bool always_quoted) {
  return !always_quoted && is_safe_plain(text) ? std::string(text) : in_quotes(text);
}

std::string yaml_text(const YamlNode& node) {
  switch (node.kind) {
    case YamlNode::Kind::null:
      return "null";
    case YamlNode::Kind::scalar:
      return yaml_scalar(node.value, node.is_quoted);
    case YamlNode::Kind::list:
    case YamlNode::Kind::map:
      break;
  }
  std::string text = node.is_map() ? "{" : "[";
  for (std::size_t i = 0; i < node.children.size(); ++i) {
    if (i > 0) text += ", ";
    if (node.is_map()) text += yaml_text(node.keys[i]) + ": ";
    text += yaml_text(node.children[i]);
  }
  return text + (node.is_map() ? "}" : "]");
}

}  // namespace gazewright
