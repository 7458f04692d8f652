#include "app/plots/charts.h"
#include "app/plots/csv.h"
#include "app/plots/format.h"
#include "app/plots/picture_plot.h"
#include "app/plots/share_bars.h"
#include "app/plots/text.h"

namespace gazewright {
namespace {

struct Word {
  const char* id;
  const char* name;
};
constexpr Word kWords[]{{"backlash", QT_TRANSLATE_NOOP("Plots", "Backlash")},
                        {"encoder", QT_TRANSLATE_NOOP("Plots", "Encoder")},
                        {"windup", QT_TRANSLATE_NOOP("Plots", "Windup of the gear")},
                        {"droop", QT_TRANSLATE_NOOP("Plots", "Droop of the loop")},
                        {"friction", QT_TRANSLATE_NOOP("Plots", "Friction")},
                        {"flex", QT_TRANSLATE_NOOP("Plots", "Bracket")},
                        {"bearing", QT_TRANSLATE_NOOP("Plots", "Bearing play")},
                        {"ripple", QT_TRANSLATE_NOOP("Plots", "Cogging")},
                        {"mount", QT_TRANSLATE_NOOP("Plots", "Mounting")},
                        {"calibration", QT_TRANSLATE_NOOP("Plots", "Calibration")},
                        {"vision", QT_TRANSLATE_NOOP("Plots", "Vision noise")}};

QString angle(double rad) { return format_value(rad, "rad", "deg"); }

QString title_of(const Analysis& analysis, Axis axis) {
  const auto expanded = analysis.value(chart_parts::figure_id(axis, "pointing.expanded"));
  const auto pixels = analysis.value(chart_parts::figure_id(axis, "pointing.expanded_px"));
  QString text = Plots::tr("%1, ±%2 in 95 of 100 cases")
                     .arg(axis_word(axis), format_value(expanded, "rad", "deg"));
  if (pixels) text += QStringLiteral(", ") + format_value(*pixels, "1", "px");
  return text;
}

ShareList list_of(const Analysis& analysis, Axis axis, const PointingBudget& budget) {
  ShareList list{axis, title_of(analysis, axis), {}};
  double squares = 0;
  for (const PointingTerm& term : budget.terms) squares += term.deviation_rad * term.deviation_rad;
  for (const PointingTerm& term : budget.terms) {
    const double share = squares > 0 ? term.deviation_rad * term.deviation_rad / squares : 0;
    list.bars.push_back({pointing_word(term.id), share, angle(term.deviation_rad), false});
  }
  return list;
}

using Budgets = std::array<PointingBudget, 2>;  ///< by Axis; empty where it is not shown

QString lists_words(const std::vector<ShareList>& lists) {
  QStringList lines;
  for (const ShareList& list : lists) {
    lines << list.title;
    for (const ShareBar& bar : list.bars)
      lines << QStringLiteral("%1: %2, %3")
                   .arg(bar.name, bar.value, format_value(bar.share, "1", "%", 2));
  }
  return lines.join(QStringLiteral(". "));
}

QString budgets_csv(const Budgets& budgets) {
  QString text = Plots::tr("Axis,Error,Largest / rad,Standard deviation / rad,Distribution") + '\n';
  for (const Axis axis : kAxes) {
    for (const PointingTerm& term : budgets[std::size_t(axis)].terms) {
      text += axis_word(axis) + ',' + csv_quoted(pointing_word(term.id)) + ',' +
              csv_number(term.half_width_rad) + ',' + csv_number(term.deviation_rad) + ',' +
              csv_quoted(QString::fromStdString(term.distribution)) + '\n';
    }
  }
  return text;
}

}  // namespace

QString pointing_word(const std::string& id) {
  for (const Word& word : kWords)
    if (id == word.id) return Plots::tr(word.name);
  return QString::fromStdString(id);
}

PlotPicture pointing_picture(const PlotInput& input) {
  PlotPicture picture;
  std::vector<ShareList> lists;
  Budgets budgets;
  QStringList missing;
  for (const Axis axis : kAxes) {
    if (input.now == nullptr || !chart_parts::shows(input, axis)) continue;
    PointingBudget& budget = budgets[std::size_t(axis)];
    budget = input.now->pointing[std::size_t(axis)];
    if (budget.terms.empty()) {
      missing << chart_parts::missing_text(*input.now, axis, "pointing.rss");
    } else {
      lists.push_back(list_of(*input.now, axis, budget));
    }
  }
  if (lists.empty())
    picture.message = input.now == nullptr ? chart_parts::nothing_yet() : missing.join('\n');
  picture.words = lists_words(lists);
  picture.csv = [budgets = std::move(budgets)] { return budgets_csv(budgets); };
  picture.paint = [lists = std::move(lists)](QPainter& painter, const QRectF& inside,
                                             const Theme& theme) {
    paint_share_lists(painter, inside, lists, QStringLiteral("0.0000°  00.0 %"), theme);
  };
  return picture;
}

}  // namespace gazewright
