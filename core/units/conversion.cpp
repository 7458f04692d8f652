#include "core/units/conversion.h"

#include <cassert>
#include <cmath>
#include <numbers>

#include "core/units/unit_system.h"
#include "core/units/unit_text.h"
#include "core/units/units.h"

namespace gazewright {
namespace {

constexpr double kKilogramForce_N = 9.80665;

/// Diameter of bare wire of gauge n: 0.127 mm·92^((36 − n)/39). Source: ASTM B258.
double wire_diameter_m(double gauge) { return 0.127e-3 * std::pow(92.0, (36 - gauge) / 39); }
double wire_gauge(double diameter_m) {
  return 36 - 39 * std::log(diameter_m / 0.127e-3) / std::log(92.0);
}

bool has_dimension_of(const UnitFacts& facts, std::string_view unit) {
  const auto wanted = find_unit(unit);
  return wanted && wanted->dimension == facts.dimension;
}

}  // namespace

double Conversion::to_si(double value) const {
  return is_wire_gauge ? wire_diameter_m(value) : scale * value + offset;
}
double Conversion::from_si(double value_si) const {
  return is_wire_gauge ? wire_gauge(value_si) : (value_si - offset) / scale;
}

std::optional<Conversion> conversion(std::string_view ascii_unit, std::string_view si_unit) {
  if (ascii_unit == "AWG" || ascii_unit == "awg")
    return si_unit == "m" ? std::optional(Conversion{1, 0, true}) : std::nullopt;
  const auto facts = find_unit(ascii_unit);
  if (!facts) return std::nullopt;
  if (has_dimension_of(*facts, si_unit)) {
    const bool is_ambiguous = si_unit == "1/s" && has_word(ascii_unit, "Hz");
    return is_ambiguous ? std::nullopt : std::optional(Conversion{facts->scale, facts->offset});
  }
  if (si_unit == "N.m" && has_dimension_of(*facts, "kg.m"))
    return Conversion{facts->scale * kKilogramForce_N};
  if (si_unit == "N.m.s/rad" && has_dimension_of(*facts, "N.m.s"))
    return Conversion{facts->scale, facts->offset};
  return std::nullopt;
}

namespace {

/// For showing only: what `conversion` knows, any unit as itself ("N.m/√W"), and frequencies in Hz,
/// which is a turn a second here.
std::optional<Conversion> shown_conversion(std::string_view unit, std::string_view si_unit) {
  constexpr double kTurn_rad = 2 * std::numbers::pi;
  if (unit == si_unit) return Conversion{};
  if (si_unit == "rad/s" && unit == "Hz") return Conversion{kTurn_rad};
  return conversion(in_ascii(unit), si_unit);
}

}  // namespace

double to_si(double value, std::string_view si_unit, std::string_view unit) {
  const auto how = shown_conversion(unit, si_unit);
  assert(how);
  return how ? how->to_si(value) : std::nan("");
}

double from_si(double value_si, std::string_view si_unit, std::string_view unit) {
  const auto how = shown_conversion(unit, si_unit);
  assert(how);
  return how ? how->from_si(value_si) : std::nan("");
}

}  // namespace gazewright
