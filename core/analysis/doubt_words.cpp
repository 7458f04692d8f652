#include "core/analysis/doubt_words.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/compare.h"
#include "core/analysis/say.h"
#include "core/files/spelling.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

/// A share of the variance above this leaves next to nothing to the others.
constexpr double kAllOfIt = 0.999;

/// A difference of a figure, in kelvin for temperatures and in points for percents.
std::string say_change(double change_si, const FigureInfo& info) {
  const std::string_view unit = unit_of_difference(info.unit);
  std::string text = say(change_si, unit == info.unit ? info.si_unit : unit, unit);
  if (unit == "%") text.replace(text.size() - 1, 1, words("points"));
  return text;
}

/// "tilt's settle time", "the moving mass".
std::string figure_phrase(const DoubtedFigure& figure, const FigureInfo& info) {
  std::string label = in_sentence(info.label);
  if (label.starts_with("the ")) label.erase(0, 4);
  for (const Axis axis : kAxes)
    if (figure.id.starts_with(std::string(name_of(axis)) + '.'))
      return words("%1's %2", words(name_of(axis)), label);
  return words("the %1", label);
}

}  // namespace

std::string say_worth(const std::string& measuring, const DoubtedFigure& figure, const Shift& shift,
                      const FigureInfo& info) {
  const std::string phrase = figure_phrase(figure, info);
  if (!shift.low || !shift.high) {
    const std::string where = !shift.low && !shift.high ? words("at either end")
                              : shift.low               ? words("at the upper end")
                                                        : words("at the lower end");
    return words("%1 would tell whether %2 holds: %3 of its range there is none (%4)", measuring,
                 phrase, where, shift.because);
  }
  const double left = figure.uncertainty_si * std::sqrt(std::max(0.0, 1 - shift.share));
  const bool is_all = shift.share > kAllOfIt;
  return words("%1 would take %2 of the ±%3 off %4", measuring,
               is_all ? words("all") : say_change(figure.uncertainty_si - left, info),
               say_change(figure.uncertainty_si, info), phrase);
}

std::string say_exact(const Doubts& doubts) {
  return words("Values without a spread, taken as exact: %1", std::to_string(doubts.exact));
}

std::string why_none_worth(const Doubts& doubts) {
  const bool any = std::ranges::any_of(doubts.unknowns, [](const Unknown& unknown) {
    return unknown.is_stated || unknown.source != Source::by_default;
  });
  return any ? words("no main figure is known, or none moves noticeably")
             : words("no value has a spread, nor a source with a usual one");
}

}  // namespace gazewright
