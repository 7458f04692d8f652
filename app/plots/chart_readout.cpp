#include "app/plots/chart_readout.h"

#include <algorithm>
#include <cmath>

#include "app/plots/difference.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/plots/variant_lines.h"

namespace gazewright {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr int kTableDigits = 6;
constexpr double kDust = 1e-9;  // of what the axis shows: the rounding of sums

double dusted(double value, const Range& axis) {
  const double shown = std::max(std::abs(axis.lo), std::abs(axis.hi));
  return std::abs(value) < kDust * shown ? 0 : value;
}

QString delta(double value, const QString& unit) {
  return QStringLiteral("Δ ") + with_unit(number_text(value), unit);
}

/// "°/s" over time in ms, else "°C/min".
QString slope_unit(const Chart& chart) {
  const bool timed = chart.x_per_s > 0;
  const QString below = timed ? QStringLiteral("s") : chart.x_unit;
  if (below.isEmpty()) return chart.y_unit;
  if (timed && chart.y_unit.endsWith(QStringLiteral("/s"))) return chart.y_unit + QChar(0x00B2);
  return (chart.y_unit.isEmpty() ? QStringLiteral("1") : chart.y_unit) + '/' + below;
}

double shown_slope(const Chart& chart, const SeriesReading& reading) {
  return reading.slope() * (chart.x_per_s > 0 && !reading.is_path ? chart.x_per_s : 1);
}

/// The frequency of two places in time, else the reciprocal.
QString reciprocal(const Chart& chart, double dx) {
  if (dx == 0 || !std::isfinite(dx)) return {};
  if (chart.x_per_s > 0)
    return with_unit(number_text(std::abs(chart.x_per_s / dx)), QStringLiteral("Hz"));
  const QString unit = chart.x_unit == QStringLiteral("Hz") ? QStringLiteral("s")
                       : chart.x_unit.isEmpty()             ? QString()
                                                            : QStringLiteral("1/") + chart.x_unit;
  return with_unit(number_text(std::abs(1 / dx)), unit);
}

QString series_line(const Chart& chart, const SeriesReading& reading) {
  QString text =
      reading.name + QStringLiteral("  ") + with_unit(number_text(reading.ya), chart.y_unit);
  if (reading.is_path)
    text += QStringLiteral(", ") + with_unit(number_text(reading.xa), chart.x_unit);
  if (!std::isfinite(reading.dx())) return text;
  text += QStringLiteral("  ") + delta(reading.dy(), chart.y_unit);
  if (reading.is_path) return text + QStringLiteral(", ") + delta(reading.dx(), chart.x_unit);
  if (reading.dx() == 0) return text;
  return text + QStringLiteral("  ") +
         with_unit(number_text(shown_slope(chart, reading)), slope_unit(chart));
}

}  // namespace

qsizetype sample_at(const Series& series, double x, double time_s) {
  const bool path = series.is_path();
  const QVector<double>& along = path ? series.time_s : series.x;
  const double wanted = path ? time_s : x;
  if (along.isEmpty() || !std::isfinite(wanted)) return -1;
  const auto after = std::lower_bound(along.begin(), along.end(), wanted);
  if (after == along.begin()) return 0;
  if (after == along.end()) return along.size() - 1;
  const bool next = *after - wanted < wanted - *(after - 1);
  return (after - along.begin()) - (next ? 0 : 1);
}

Readout read(const Chart& chart, const CursorPlace& a, const CursorPlace& b) {
  Readout readout{kNone, kNone, {}};
  std::vector<const Series*> in_order;
  for (const Series& series : chart.series) in_order.push_back(&series);
  std::stable_partition(in_order.begin(), in_order.end(),
                        [](const Series* s) { return chart_parts::is_present(s->line); });
  for (const Series* each : in_order) {
    const Series& series = *each;
    const qsizetype at_a = sample_at(series, a.x, a.time_s);
    const qsizetype at_b = sample_at(series, b.x, b.time_s);
    if (at_a < 0 && at_b < 0) continue;
    SeriesReading reading{series.name, series.axis, series.is_path(), kNone, kNone, kNone, kNone};
    const auto point = [&](qsizetype at) {
      return std::pair(dusted(series.x[at], chart.x), dusted(series.y[at], chart.y));
    };
    if (at_a >= 0) std::tie(reading.xa, reading.ya) = point(at_a);
    if (at_b >= 0) std::tie(reading.xb, reading.yb) = point(at_b);
    if (!reading.is_path && std::isnan(readout.xa)) readout.xa = reading.xa;
    if (!reading.is_path && std::isnan(readout.xb)) readout.xb = reading.xb;
    readout.series.push_back(reading);
  }
  return readout;
}

QStringList readout_lines(const Chart& chart, const Readout& readout) {
  QStringList lines;
  if (std::isfinite(readout.xa)) {
    QString line =
        chart.x_name + QStringLiteral("  ") + with_unit(number_text(readout.xa), chart.x_unit);
    const double dx = readout.xa - readout.xb;
    if (std::isfinite(dx)) {
      line += QStringLiteral("  ") + delta(dx, chart.x_unit);
      if (const QString other = reciprocal(chart, dx); !other.isEmpty())
        line += QStringLiteral("  1/Δ ") + other;
    }
    lines << line;
  }
  for (const SeriesReading& reading : readout.series) {
    if (std::isfinite(reading.xa)) lines << series_line(chart, reading);
  }
  return lines;
}

QString readout_table(const Chart& chart, const Readout& readout) {
  const auto number = [](double value) {
    return std::isfinite(value) ? number_text(value, kTableDigits) : QString();
  };
  const auto row = [&](const QString& name, double a, double b, const QString& last) {
    return QStringList{name, number(a), number(b), number(a - b), last}.join('\t') + '\n';
  };
  QString text = QStringList{Plots::tr("Line"), QStringLiteral("A"), QStringLiteral("B"),
                             QStringLiteral("Δ"), Plots::tr("1/Δ, slope")}
                     .join('\t') +
                 '\n';
  if (std::isfinite(readout.xa) || std::isfinite(readout.xb)) {
    text += row(axis_title(chart.x_name, chart.x_unit), readout.xa, readout.xb,
                reciprocal(chart, readout.xa - readout.xb));
  }
  for (const SeriesReading& reading : readout.series) {
    if (reading.is_path)
      text += row(reading.name + QStringLiteral(", ") + axis_title(chart.x_name, chart.x_unit),
                  reading.xa, reading.xb, {});
    const double slope = shown_slope(chart, reading);
    text += row(axis_title(said_name(chart, reading.name), chart.y_unit), reading.ya, reading.yb,
                std::isfinite(slope) && !reading.is_path
                    ? with_unit(number_text(slope), slope_unit(chart))
                    : QString());
  }
  return text;
}

}  // namespace gazewright
