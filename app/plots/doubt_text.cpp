#include "app/plots/doubt_text.h"

#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "core/analysis/compare.h"

namespace gazewright {
namespace {

constexpr double kMostPercent = 2;  ///< a larger part of the value is said in its unit

QString difference(double by, std::string_view si_unit, std::string_view unit) {
  const std::string_view apart = unit_of_difference(unit);
  return format_value(by, apart == unit ? si_unit : apart, apart, 2);
}

}  // namespace

QString doubted_value(const Unknown& unknown) {
  const QString value = format_value(unknown.value_si, unknown.si_unit, unknown.unit);
  const double part = unknown.spread_si / std::abs(unknown.value_si);
  const bool has_zero = unit_of_difference(unknown.unit) == unknown.unit;
  if (!has_zero || unknown.unit == "%" || !(part <= kMostPercent))
    return value + QStringLiteral(" ±") +
           difference(unknown.spread_si, unknown.si_unit, unknown.unit);
  return Plots::tr("%1 ±%2 %").arg(value, number_text(100 * part, 2));
}

QString doubted_source(const QString& source_word, const Unknown& unknown) {
  return unknown.is_stated ? source_word : Plots::tr("%1; usual spread").arg(source_word);
}

QString share_text(double share) {
  return share < 0.005 ? Plots::tr("< 1 %") : Plots::tr("%1 %").arg(std::round(100 * share));
}

bool matters(const DoubtedFigure& figure) {
  return !figure.is_known_whole || figure.uncertainty_si >= 1e-3 * std::abs(figure.value);
}

QString plus_minus(const DoubtedFigure& figure, const FigureInfo& info) {
  if (info.unit == "%")
    return Plots::tr("±%1 points").arg(number_text(100 * figure.uncertainty_si, 2));
  return QStringLiteral("±") + difference(figure.uncertainty_si, info.si_unit, info.unit);
}

QString plus_minus(const Doubts& doubts, const Analysis& analysis, std::string_view id) {
  const DoubtedFigure* doubted = doubts.figure(id);
  const Figure* figure = analysis.figure(id);
  if (doubted == nullptr || figure == nullptr || figure->info == nullptr) return {};
  const QString text = plus_minus(*doubted, *figure->info);
  return doubted->is_known_whole ? text : Plots::tr("%1 or more").arg(text);
}

QString shift_text(const Shift& shift, const FigureInfo& info) {
  const auto end = [&](const std::optional<double>& value) {
    return value ? format_value(*value, info.si_unit, info.unit)
                 : Plots::tr("none (%1)").arg(reason_text(shift.because));
  };
  return Plots::tr("%1 to %2").arg(end(shift.low), end(shift.high));
}

QString plus_minus_meaning() {
  return Plots::tr(
      "± is two standard uncertainties, about 95 % where many unknowns add up. Each unknown was "
      "put to both ends of its range, the others as entered; that unknowns hang together is left "
      "out, and so is what no value of the rig stands for.");
}

}  // namespace gazewright
