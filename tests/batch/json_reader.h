#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// A strict reader of JSON (RFC 8259) for tests: anything that is not JSON is refused.
namespace gazewright::test {

struct Json {
  using Array = std::vector<Json>;
  using Object = std::map<std::string, Json>;
  std::variant<std::nullptr_t, bool, double, std::string, Array, Object> value = nullptr;
  std::vector<std::string> keys;  ///< of an object, in the order of the text

  bool is_null() const { return value.index() == 0; }
  const double& number() const { return std::get<double>(value); }
  const std::string& string() const { return std::get<std::string>(value); }
  const Array& array() const { return std::get<Array>(value); }
  const Object& object() const { return std::get<Object>(value); }
  const Json& at(const std::string& key) const { return object().at(key); }
};

/// Empty where the text is not exactly one JSON value, or a key comes twice.
std::optional<Json> read_json(std::string_view text);

}  // namespace gazewright::test
