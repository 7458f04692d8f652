#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "core/analysis/input_names.h"

namespace gazewright {

const QVector<double>& stock_ratios() {
  static const QVector<double> ratios{3, 4, 5, 7, 10, 16, 20, 25, 30, 35, 40, 50, 70, 100};
  return ratios;
}

namespace {

/// "needs a, b, c, d and 17 more": a plot has room for no more.
QString first_few(const QString& because) {
  constexpr qsizetype kNamed = 4;
  const QStringList all = because.split(QStringLiteral(", "));
  if (!begins_as("needs %1", because.toStdString()) || all.size() <= kNamed + 1) return because;
  return all.mid(0, kNamed).join(QStringLiteral(", ")) +
         Plots::tr(" and %1 more").arg(all.size() - kNamed);
}

QString without_marks(QString word) {
  while (!word.isEmpty() && QStringLiteral(",.;:").contains(word.back())) word.chop(1);
  return word;
}

QString phrase_of(const QString& path) {
  return QString::fromStdString(path_words(path.toStdString()));
}

}  // namespace

QString reason_text(const std::string& because) {
  QStringList words = first_few(QString::fromStdString(because)).split(' ');
  for (QString& word : words) {
    const QString path = without_marks(word), phrase = phrase_of(path);
    if (!phrase.isEmpty()) word = phrase + word.mid(path.size());
  }
  return words.join(' ');
}

QStringList keys_in(const std::string& because) {
  QStringList keys;
  for (const QString& word : QString::fromStdString(because).split(' '))
    if (const QString path = without_marks(word); !phrase_of(path).isEmpty()) keys << path;
  return keys;
}

QString figure_text(const Figure* figure, const QString& otherwise) {
  if (figure == nullptr || !figure->value) return otherwise;
  return format_value(*figure->value, figure->info->si_unit, figure->info->unit);
}

namespace chart_parts {

Chart time_chart(PlotKind kind, const QString& y_name, const QString& y_unit) {
  Chart chart = empty_chart(kind, {Plots::tr("Time"), QStringLiteral("ms")}, {y_name, y_unit});
  chart.x_per_s = kMsPerS;
  return chart;
}

bool shows(const PlotInput& input, Axis axis) { return !input.only || *input.only == axis; }

QString nothing_yet() { return Plots::tr("Nothing computed yet. Open or describe a rig."); }

Chart empty_chart(PlotKind kind, const AxisWords& x, const AxisWords& y) {
  Chart chart;
  chart.kind = kind;
  chart.x_name = x.name;
  chart.x_unit = x.unit;
  chart.y_name = y.name;
  chart.y_unit = y.unit;
  chart.x_title = axis_title(x.name, x.unit);
  chart.y_title = axis_title(y.name, y.unit);
  return chart;
}

void add_axis_legend(Chart& chart, const PlotInput& input) {
  for (const Axis axis : kAxes) {
    if (shows(input, axis)) chart.legend.append({axis_word(axis), axis, Line::strong});
  }
}

QVector<double> scaled(const std::vector<double>& values, double factor) {
  QVector<double> result(qsizetype(values.size()));
  std::transform(values.begin(), values.end(), result.begin(),
                 [factor](double v) { return v * factor; });
  return result;
}

std::string figure_id(Axis axis, const char* rest) {
  return std::string(name_of(axis)) + '.' + rest;
}

QString missing_text(const Analysis& analysis, Axis axis, const char* figure) {
  const Figure* found = analysis.figure(figure_id(axis, figure));
  const QString why = found != nullptr ? reason_text(found->because) : QString();
  return why.isEmpty() ? Plots::tr("%1: nothing to show").arg(axis_word(axis))
                       : QStringLiteral("%1: %2").arg(axis_word(axis), why);
}

void add_limits(Chart& chart, const PlotInput& input, const std::array<double, 2>& values,
                const LimitWords& words) {
  const double top = chart.y.hi;
  const auto add = [&](std::optional<Axis> axis, double value, const QString& text) {
    if (!std::isfinite(value) || value > 1.5 * top) return;
    chart.marks.append({.kind = Mark::Kind::limit_above, .axis = axis, .y = value, .text = text});
    chart.y.hi = std::max(chart.y.hi, value + 0.06 * (value - chart.y.lo));
  };
  if (!input.only && values[0] == values[1]) return add({}, values[0], words.shared);
  for (const Axis axis : kAxes) {
    if (shows(input, axis)) {
      add(axis, values[std::size_t(axis)], words.of_axis.arg(axis_word(axis)));
    }
  }
}

}  // namespace chart_parts
}  // namespace gazewright
