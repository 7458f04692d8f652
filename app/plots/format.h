#pragma once

#include <QString>
#include <optional>
#include <string_view>

/// Numbers as people read them: three significant digits, the locale's decimal sign, a true minus,
/// a narrow no-break space before the unit (none before °). Units are UDUNITS text as in the
/// tables ("N.m", "g.cm2", "deg"); "1" is a plain number without a unit.
namespace gazewright {

/// "148 ms", "−12.5°", "5.9 g·m²", "2.1 mN·m" for 0.0021 N·m. Infinity is "none"; NaN is "–".
QString format_value(double value_si, std::string_view si_unit, std::string_view unit,
                     int digits = 3);
/// The same for a value that may be missing: "–".
QString format_value(std::optional<double> value_si, std::string_view si_unit,
                     std::string_view unit, int digits = 3);
/// Only the number, only the unit ("N·m").
QString format_number(double value_si, std::string_view si_unit, std::string_view unit,
                      int digits = 3);
QString unit_text(std::string_view unit);
/// A bare number in the locale with a true minus and no needless zeros.
QString number_text(double value, int digits = 3);
/// A number and a unit as they are: "12.3°", "5 A", "5".
QString with_unit(const QString& number, const QString& unit);
/// "+8 %", "−25 %", "> 999 %"; "none" where infinite, "–" where missing.
QString margin_text(std::optional<double> margin);

/// The unit with the SI prefix that reads best for `value` in `unit`: "N.m" becomes "mN.m" for
/// 0.0021. From 0.1 to 10 000 the unit stays, as do units without a prefix of their own.
std::string_view reading_unit(double value, std::string_view unit);

}  // namespace gazewright
