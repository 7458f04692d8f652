#include "app/plots/chart.h"

#include <algorithm>
#include <cmath>

#include "app/plots/csv.h"
#include "app/plots/difference.h"
#include "app/plots/text.h"

namespace gazewright {
namespace {

QString quoted(const QString& text) {
  if (!text.contains(',') && !text.contains('"')) return text;
  return csv_quoted(text);
}

}  // namespace

QString axis_title(const QString& name, const QString& unit) {
  return unit.isEmpty() ? name : name + QStringLiteral(" / ") + unit;
}

double round_up(double value) {
  if (!(value > 0) || !std::isfinite(value)) return 1;
  const double power = std::pow(10, std::floor(std::log10(value)));
  for (const double step : {1.0, 2.0, 2.5, 5.0}) {
    if (value <= step * power * (1 + 1e-9)) return step * power;
  }
  return 10 * power;
}

Range y_range(const Chart& chart, Range x) {
  double lo = kInfinity, hi = -kInfinity;
  for (const Series& series : chart.series) {
    for (qsizetype i = 0; i < series.x.size(); ++i) {
      if (series.x[i] < x.lo || series.x[i] > x.hi || !std::isfinite(series.y[i])) continue;
      lo = std::min(lo, series.y[i]);
      hi = std::max(hi, series.y[i]);
    }
  }
  if (lo > hi) return {};
  if (lo == hi) return {lo - 1, hi + 1};
  const double air = (hi - lo) / 20;
  return {lo - air, hi + air};
}

QString csv_of(const Chart& chart) {
  QStringList header;
  std::vector<const QVector<double>*> columns;
  const QVector<double>* shared_x = nullptr;
  for (const Series& series : chart.series) {
    if (shared_x == nullptr || *shared_x != series.x) {
      header << quoted(axis_title(chart.x_name, chart.x_unit));
      columns.push_back(&series.x);
      shared_x = &series.x;
    }
    header << quoted(axis_title(said_name(chart, series.name), chart.y_unit));
    columns.push_back(&series.y);
  }
  for (const Ribbon& ribbon : chart.ribbons) {
    if (shared_x == nullptr || *shared_x != ribbon.x) {
      header << quoted(axis_title(chart.x_name, chart.x_unit));
      columns.push_back(&ribbon.x);
      shared_x = &ribbon.x;
    }
    header << quoted(axis_title(Plots::tr("%1 at least").arg(ribbon.name), chart.y_unit))
           << quoted(axis_title(Plots::tr("%1 at most").arg(ribbon.name), chart.y_unit));
    columns.push_back(&ribbon.low);
    columns.push_back(&ribbon.high);
  }
  QString text = header.join(',') + '\n';
  qsizetype rows = 0;
  for (const auto* column : columns) rows = std::max(rows, column->size());
  for (qsizetype row = 0; row < rows; ++row) {
    QStringList cells;
    for (const auto* column : columns) {
      cells << (row < column->size() ? csv_number((*column)[row]) : QString());
    }
    text += cells.join(',') + '\n';
  }
  return text;
}

QString summary_of(const Chart& chart) {
  if (!chart.message.isEmpty()) return chart.message;
  QStringList sentences = chart.readings + chart.notes;
  if (const qsizetype gaps = gap_count(chart); gaps > 0) {
    sentences << Plots::tr("%n points have no value and leave a gap", nullptr, int(gaps));
  }
  for (QString& sentence : sentences) sentence = sentence_start(sentence);
  return sentences.join(QStringLiteral(". "));
}

}  // namespace gazewright
