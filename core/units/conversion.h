#pragma once

#include <optional>
#include <string_view>

/// Conversion into a field's SI unit. Used by core/units only.
namespace gazewright {

/// value_SI = scale·value + offset; a wire gauge is not linear and says so.
struct Conversion {
  double scale = 1, offset = 0;
  bool is_wire_gauge = false;

  double to_si(double value) const;
  double from_si(double value_si) const;
};

/// How a unit becomes a field's SI unit; empty where it is not known or of another dimension. What
/// UDUNITS-2 takes as one is kept apart: a plain number, an angle and a turn; Hz, rad/s and 1/s.
/// What the trade means is allowed: kg.cm as a torque, N.m.s as a torque per angular speed.
std::optional<Conversion> conversion(std::string_view ascii_unit, std::string_view si_unit);

}  // namespace gazewright
