#include "tests/batch/json_reader.h"

#include <charconv>
#include <cstdlib>

namespace gazewright::test {
namespace {

/// Reads from the front of `text_`; `failed_` says that it is not JSON.
class Reader {
 public:
  explicit Reader(std::string_view text) : text_(text) {}
  std::optional<Json> whole() {
    Json json = value();
    skip();
    if (failed_ || !text_.empty()) return {};
    return json;
  }

 private:
  void skip() {
    const std::size_t at = text_.find_first_not_of(" \t\r\n");
    text_.remove_prefix(std::min(at, text_.size()));
  }
  bool take(std::string_view word) {
    skip();
    if (!text_.starts_with(word)) return false;
    text_.remove_prefix(word.size());
    return true;
  }
  void need(std::string_view word) { failed_ |= !take(word); }

  Json value() {
    skip();
    if (failed_ || text_.empty()) return fail();
    if (take("null")) return {};
    if (take("true")) return {true, {}};
    if (take("false")) return {false, {}};
    if (text_[0] == '"') return {string(), {}};
    if (take("[")) return array();
    if (take("{")) return object();
    return number();
  }
  Json fail() {
    failed_ = true;
    return {};
  }
  Json number() {
    // from_chars takes the grammar of RFC 8259 and a little more: leading zeros, "inf", "nan".
    double read = 0;
    const char* begin = text_.data();
    const auto [end, error] = std::from_chars(begin, begin + text_.size(), read);
    const std::string_view written(begin, std::size_t(end - begin));
    if (error != std::errc{} || written.find_first_not_of("0123456789+-.eE") != written.npos)
      return fail();
    if (written.size() > 1 && written[0] == '0' && written[1] != '.' && written[1] != 'e')
      return fail();
    text_.remove_prefix(written.size());
    return {read, {}};
  }
  std::string string() {
    std::string read;
    need("\"");
    while (!failed_) {
      if (text_.empty() || static_cast<unsigned char>(text_[0]) < 0x20) {
        failed_ = true;
      } else if (text_[0] == '"') {
        text_.remove_prefix(1);
        break;
      } else if (text_[0] == '\\') {
        read += escape();
      } else {
        read += text_[0];
        text_.remove_prefix(1);
      }
    }
    return read;
  }
  std::string escape() {
    static constexpr std::string_view kLetters = "\"\\/bfnrt", kMeaning = "\"\\/\b\f\n\r\t";
    if (text_.size() < 2) return failed_ = true, "";
    const char letter = text_[1];
    if (const std::size_t at = kLetters.find(letter); at != kLetters.npos) {
      text_.remove_prefix(2);
      return {kMeaning[at]};
    }
    unsigned code = 0;
    if (letter != 'u' || text_.size() < 6 ||
        std::from_chars(text_.data() + 2, text_.data() + 6, code, 16).ptr != text_.data() + 6 ||
        code >= 0x80)
      return failed_ = true, "";
    text_.remove_prefix(6);
    return {static_cast<char>(code)};
  }
  Json array() {
    Json::Array items;
    if (take("]")) return {items, {}};
    do items.push_back(value());
    while (!failed_ && take(","));
    need("]");
    return {items, {}};
  }
  Json object() {
    Json::Object members;
    std::vector<std::string> keys;
    if (take("}")) return {members, {}};
    do {
      skip();
      keys.push_back(string());
      need(":");
      failed_ |= !members.emplace(keys.back(), value()).second;
    } while (!failed_ && take(","));
    need("}");
    return {members, keys};
  }

  std::string_view text_;
  bool failed_ = false;
};

}  // namespace

std::optional<Json> read_json(std::string_view text) { return Reader(text).whole(); }

}  // namespace gazewright::test
