#include "core/units/unit_system.h"

#include <udunits2.h>

#include <array>
#include <cmath>
#include <cstdlib>
#include <map>
#include <memory>
#include <mutex>

#include "core/units/unit_text.h"

namespace gazewright {
namespace {

struct FreeUnit {
  void operator()(ut_unit* unit) const { ut_free(unit); }
};
struct FreeConverter {
  void operator()(cv_converter* converter) const { cv_free(converter); }
};
using Unit = std::unique_ptr<ut_unit, FreeUnit>;
using Converter = std::unique_ptr<cv_converter, FreeConverter>;

/// The library's parser keeps state in globals: everything below runs under this lock.
std::mutex& library_lock() {
  static std::mutex lock;
  return lock;
}

/// Loaded once and kept for the life of the program; null where the table of units is missing.
ut_system* unit_system() {
  static ut_system* const system = [] {
    ut_set_error_message_handler(ut_ignore);
    return ut_read_xml(nullptr);
  }();
  return system;
}

/// "0.01 m2.kg.s-2" -> "m2.kg.s-2", "K @ 273.15" -> "K", "60 s" -> "s", "1" -> "1".
std::string dimension_of(std::string definition) {
  if (const auto offset = definition.find(" @ "); offset != std::string::npos)
    definition.erase(offset);
  if (const auto space = definition.find(' '); space != std::string::npos)
    definition.erase(0, space + 1);
  char* end = nullptr;
  std::strtod(definition.c_str(), &end);
  const bool is_number = !definition.empty() && *end == '\0';
  return is_number ? "1" : definition;
}

std::optional<UnitFacts> ask_library(std::string_view ascii_unit) {
  const auto text = udunits_text(ascii_unit);
  if (!text || unit_system() == nullptr) return std::nullopt;
  const Unit unit(ut_parse(unit_system(), text->c_str(), UT_ASCII));
  if (!unit) return std::nullopt;
  std::array<char, 256> definition{};
  const int length =
      ut_format(unit.get(), definition.data(), definition.size(), UT_ASCII | UT_DEFINITION);
  if (length < 0 || static_cast<std::size_t>(length) >= definition.size()) return std::nullopt;
  UnitFacts facts;
  facts.dimension = dimension_of(definition.data());
  const Unit base(ut_parse(unit_system(), facts.dimension.c_str(), UT_ASCII));
  if (!base) return std::nullopt;
  const Converter to_base(ut_get_converter(unit.get(), base.get()));
  if (!to_base) return std::nullopt;
  facts.offset = cv_convert_double(to_base.get(), 0);
  facts.scale = cv_convert_double(to_base.get(), 1) - facts.offset;
  const bool is_usable = std::isfinite(facts.scale) && std::isfinite(facts.offset);
  return is_usable && facts.scale > 0 ? std::optional(facts) : std::nullopt;
}

}  // namespace

std::optional<UnitFacts> find_unit(std::string_view ascii_unit) {
  constexpr std::size_t kMostKept = 512;
  static std::map<std::string, std::optional<UnitFacts>, std::less<>> kept;
  const std::scoped_lock hold(library_lock());
  if (const auto found = kept.find(ascii_unit); found != kept.end()) return found->second;
  if (kept.size() >= kMostKept) kept.clear();
  return kept.emplace(std::string(ascii_unit), ask_library(ascii_unit)).first->second;
}

bool has_unit_table() {
  const std::scoped_lock hold(library_lock());
  return unit_system() != nullptr;
}

}  // namespace gazewright
