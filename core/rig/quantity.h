#pragma once

#include <limits>
#include <optional>
#include <string>

namespace gazewright {

inline constexpr double kInfinity = std::numeric_limits<double>::infinity();

/// Where the user has a value from. `unstated` is what a plain entry without a source has.
enum class Source { unstated, measured, datasheet, estimate, by_default };

/// One input of a rig: its value in SI units, and what the user wrote, so that a file can be
/// rewritten as it was. A quantity that is missing has no value; it never counts as zero. A limit
/// written as `none` is +infinity.
struct Quantity {
  std::optional<double> si;  ///< in the SI unit of its field (rad, m, kg, N·m, A ...)
  std::string written;   ///< as in the file or the field, e.g. "118 g.cm2"; empty: made from `si`
  double spread_si = 0;  ///< half-width of what the value may be, same unit as `si`; 0: not stated
  std::string spread_written;  ///< e.g. "10 %" or "5 g.cm2"
  Source source = Source::unstated;

  bool has_value() const { return si.has_value(); }
  /// The value, or NaN when missing. Figures check their inputs first, so NaN never reaches a
  /// result.
  double value() const;
  bool operator==(const Quantity&) const = default;
};

/// A quantity in SI without a text of its own.
Quantity si_quantity(double value_si, Source source = Source::unstated);

const char* name_of(Source source);

}  // namespace gazewright
