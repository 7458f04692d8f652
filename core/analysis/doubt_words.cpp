#include "core/analysis/doubt_words.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/compare.h"
#include "core/analysis/say.h"
#include "core/files/spelling.h"

namespace gazewright {
namespace {

/// A share of the variance above this leaves next to nothing to the others.
constexpr double kAllOfIt = 0.999;

/// A difference of a figure, in kelvin for temperatures and in points for percents.
std::string say_change(double change_si, const FigureInfo& info) {
  const std::string_view unit = unit_of_difference(info.unit);
  std::string text = say(change_si, unit == info.unit ? info.si_unit : unit, unit);
  if (unit == "%") text.replace(text.size() - 1, 1, "points");
  return text;
}

/// "tilt's settle time", "the moving mass".
std::string figure_phrase(const DoubtedFigure& figure, const FigureInfo& info) {
  std::string label = with_small_first_letter(info.label);
  if (label.starts_with("the ")) label.erase(0, 4);
  for (const Axis axis : kAxes)
    if (figure.id.starts_with(std::string(name_of(axis)) + '.'))
      return std::string(name_of(axis)) + "'s " + label;
  return "the " + label;
}

std::string measuring(const std::string& unknown) {
  constexpr std::string_view kMass = "the mass of ";
  return unknown.starts_with(kMass) ? "weighing " + unknown.substr(kMass.size())
                                    : "measuring " + unknown;
}

}  // namespace

std::string say_worth(const std::string& unknown, const DoubtedFigure& figure, const Shift& shift,
                      const FigureInfo& info) {
  const std::string phrase = figure_phrase(figure, info);
  if (!shift.low || !shift.high) {
    const std::string where = !shift.low && !shift.high ? "at either end"
                              : shift.low               ? "at the upper end"
                                                        : "at the lower end";
    return measuring(unknown) + " would tell whether " + phrase + " holds: " + where +
           " of its range there is none (" + shift.because + ")";
  }
  const double left = figure.uncertainty_si * std::sqrt(std::max(0.0, 1 - shift.share));
  const bool is_all = shift.share > kAllOfIt;
  return measuring(unknown) + " would take " +
         (is_all ? "all" : say_change(figure.uncertainty_si - left, info)) + " of the ±" +
         say_change(figure.uncertainty_si, info) + " off " + phrase;
}

}  // namespace gazewright
