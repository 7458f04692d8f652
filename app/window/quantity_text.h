#pragma once

#include <QString>
#include <variant>

#include "core/rig/fields.h"
#include "core/units/units.h"

/// Quantities between a rig and a line of text on screen.
namespace gazewright {

/// As the user wrote it, with the locale's decimal sign and the unit as people read it: "118
/// g·cm²". Missing: empty.
QString shown_quantity(const Quantity& quantity, const FieldInfo& info);
/// The unit a bare number is taken in: the one shown.
std::string shown_unit(const Quantity& quantity, const FieldInfo& info);
/// "0 to 1", "more than 0 N·m", "1 or more", or empty where anything is allowed.
QString range_text(const FieldInfo& info);
/// What is assumed where the entry is missing: "0.95", "2 - 1/efficiency"; empty where nothing is.
QString fallback_text(const FieldInfo& info);

/// A shown quantity so many steps up or down: a step is one in its second digit, for whole numbers
/// at least 1. Empty where the text does not begin with a number.
QString stepped(const QString& text, int steps, const FieldInfo& info);

/// Reads what was typed: any unit of the dimension, decimal sign of the locale or a point; a bare
/// number is in the unit shown. Source and spread of `before` are kept; a percent spread follows
/// the value. Empty text is a missing value.
std::variant<Quantity, UnitProblem> read_typed(const QString& text, const Quantity& before,
                                               const FieldInfo& info);
/// A spread such as "10 %" or "± 5 g·cm²"; empty: none.
std::variant<Quantity, UnitProblem> read_typed_spread(const QString& text, const Quantity& before,
                                                      const FieldInfo& info);
QString shown_spread(const Quantity& quantity, const FieldInfo& info);  ///< "±10 %"

}  // namespace gazewright
