#pragma once

#include <string>
#include <string_view>
#include <variant>

#include "core/rig/fields.h"

namespace gazewright {

/// Why a text is not a quantity of the wanted dimension, and how to mend it.
struct UnitProblem {
  std::string problem;      ///< e.g. "35 has no unit; an inertia is due"
  std::string fix;          ///< e.g. "write for example 118 g.cm2"
  bool says_range = false;  ///< the mend already says what is allowed
};

/// Reads "118 g.cm2", "24V", "35 g·cm²", "0.2 Nm", "2.5 kg.cm" (torque where a torque is due), "16
/// arcmin", "none" (where allowed) or, for a plain number, "18" or "90 %" as a quantity of the
/// field's dimension. Decimal point only (files); the window replaces a locale's comma first.
/// Checks dimension, finiteness and the field's range. Thread-safe. Units by UDUNITS-2 plus aliases
/// (deg, AWG, Nm, kg.cm, KV ...).
std::variant<Quantity, UnitProblem> read_quantity(std::string_view text, const FieldInfo& info);

/// A spread as written: a percent of `value_si` ("10 %"), or a quantity of the field's dimension
/// ("5 g.cm2"). Half-width in SI.
std::variant<double, UnitProblem> read_spread(std::string_view text, const FieldInfo& info,
                                              double value_si);

/// `value_si` in another unit of the same dimension, e.g. from_si(0.1, "rad", "deg"). Temperatures
/// with their offset.
/// @pre the units are known and convertible (asserted).
double from_si(double value_si, std::string_view si_unit, std::string_view unit);
double to_si(double value, std::string_view si_unit, std::string_view unit);

/// The unit part of a written quantity ("118 g.cm2" -> "g.cm2"), or empty.
std::string unit_of_written(std::string_view written);

/// `value_si` as a file entry in `unit` with the fewest digits that read back within 1e-12 relative
/// ("18", "5.2 mm", "none" for infinity).
std::string written_quantity(double value_si, const FieldInfo& info, std::string_view unit);

/// A unit as people read it: "g.cm2" -> "g·cm²", "N.m.s/rad" -> "N·m·s/rad", "deg" -> "°", "degC"
/// -> "°C", "ohm" -> "Ω", "uH" -> "µH".
std::string pretty_unit(std::string_view unit);

}  // namespace gazewright
