#pragma once

#include <optional>
#include <string>
#include <string_view>

/// The one place that calls UDUNITS-2. Used by core/units only.
namespace gazewright {

/// A unit: value_SI = scale·value + offset, in the product of SI base units that `dimension` names.
/// The radian is kept apart from a plain number: "rad", "s-1.rad".
struct UnitFacts {
  double scale = 1, offset = 0;
  std::string dimension;
};

/// What UDUNITS-2 makes of a unit in ASCII with our aliases; empty where it is not known. The unit
/// system is loaded once and results are kept, so that asking again costs under a microsecond.
/// Thread-safe.
std::optional<UnitFacts> find_unit(std::string_view ascii_unit);

/// Whether the library found its table of units (Debian package libudunits2-data).
bool has_unit_table();

}  // namespace gazewright
