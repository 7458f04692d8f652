#include "core/heat/limits.h"

#include <utility>

#include "core/heat/copper.h"

namespace gazewright {
namespace {

constexpr std::pair<std::string_view, double> kClasses_degC[] = {
    {"A", 105}, {"E", 120}, {"B", 130}, {"F", 155}, {"H", 180}, {"N", 200}};

}  // namespace

std::optional<double> insulation_limit_K(std::string_view name) {
  for (const auto& [known, limit_degC] : kClasses_degC)
    if (known == name) return kIceCelsius_K + limit_degC;
  return std::nullopt;
}

}  // namespace gazewright
