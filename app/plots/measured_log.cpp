#include "app/plots/measured_log.h"

#include <QRegularExpression>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <limits>

#include "app/plots/text.h"
#include "core/units/angle.h"

namespace gazewright {
namespace {

constexpr qsizetype kMostRows = 1'000'000;
constexpr qsizetype kSearchPoints = 1500;
constexpr qsizetype kAskEvery = 4096;
constexpr int kCoarse = 400, kFine = 50;

struct Units {
  double time_s = 1, angle_deg = 1;
};

bool has_word(const QString& text, const QString& word) {
  const QRegularExpression pattern(QStringLiteral("(^|[^a-z])%1($|[^a-z])").arg(word));
  return text.toLower().contains(pattern);
}

Units units_of(const QStringList& header) {
  Units units;
  if (has_word(header[0], QStringLiteral("ms"))) units.time_s = 1e-3;
  if (has_word(header[0], QStringLiteral("us"))) units.time_s = 1e-6;
  if (has_word(header[1], QStringLiteral("rad"))) units.angle_deg = kDegPerRad;
  return units;
}

/// With a decimal comma only where something else stands between the cells.
std::optional<double> number_of(QString cell, QChar separator) {
  if (separator != ',') cell.replace(',', '.');
  bool ok = false;
  const double value = cell.trimmed().toDouble(&ok);
  if (!ok || !std::isfinite(value)) return {};
  return value;
}

QChar separator_of(const QString& line) {
  for (const char c : {'\t', ';'}) {
    if (line.contains(QLatin1Char(c))) return QLatin1Char(c);
  }
  return ',';
}

QString bad_line(qsizetype line, const QString& what) {
  return Plots::tr("line %1: %2").arg(line + 1).arg(what);
}

MeasuredLog thinned_log(const MeasuredLog& log) {
  const qsizetype every = std::max<qsizetype>(1, log.time_s.size() / kSearchPoints);
  MeasuredLog few;
  for (qsizetype i = 0; i < log.time_s.size(); i += every) {
    few.time_s.append(log.time_s[i]);
    few.angle_deg.append(log.angle_deg[i]);
  }
  return few;
}

}  // namespace

ReadLog read_log(const QString& text, const std::function<bool(double part)>& go_on) {
  MeasuredLog log;
  Units units;
  qsizetype next = 0;
  for (qsizetype i = 0; next <= text.size(); ++i) {
    if (go_on && i % kAskEvery == 0 && !go_on(double(next) / double(text.size())))
      return {{}, Plots::tr("cancelled")};
    const qsizetype from = next, to = text.indexOf('\n', from);
    next = to < 0 ? text.size() + 1 : to + 1;
    const QString line = text.mid(from, next - from - 1).trimmed();
    if (line.isEmpty()) continue;
    const QChar separator = separator_of(line);
    const QStringList cells = line.split(separator);
    if (cells.size() < 2)
      return {{}, bad_line(i, Plots::tr("two columns are wanted, time and angle"))};
    const auto time = number_of(cells[0], separator), angle = number_of(cells[1], separator);
    if (!time || !angle) {
      if (!log.time_s.isEmpty())
        return {{}, bad_line(i, Plots::tr("\"%1\" are not two numbers").arg(line.left(40)))};
      units = units_of(cells);
      continue;
    }
    const double time_s = *time * units.time_s;
    if (!log.time_s.isEmpty() && !(time_s > log.time_s.back()))
      return {{}, bad_line(i, Plots::tr("the time has to rise from line to line"))};
    if (log.time_s.size() == kMostRows)
      return {{}, Plots::tr("more than a million lines; leave some out")};
    log.time_s.append(time_s);
    log.angle_deg.append(*angle * units.angle_deg);
  }
  if (log.time_s.size() < 2) return {{}, Plots::tr("two lines of numbers at least are wanted")};
  return {log, {}};
}

MeasuredLog fitted(const MeasuredLog& log, const LogFit& fit) {
  MeasuredLog result = log;
  for (double& time_s : result.time_s) time_s += fit.shift_s;
  for (double& angle_deg : result.angle_deg) angle_deg = fit.scale * angle_deg + fit.offset_deg;
  return result;
}

LogResidual residual_of(const MeasuredLog& model, const MeasuredLog& log, const LogFit& fit) {
  LogResidual residual;
  double squares = 0;
  qsizetype next = 1;
  for (qsizetype i = 0; i < log.time_s.size() && model.time_s.size() > 1; ++i) {
    const double t = log.time_s[i] + fit.shift_s;
    if (t < model.time_s.front() || t > model.time_s.back()) continue;
    while (next + 1 < model.time_s.size() && model.time_s[next] < t) ++next;
    const double from = model.time_s[next - 1], to = model.time_s[next];
    const double part = (t - from) / (to - from);
    const double expected = std::lerp(model.angle_deg[next - 1], model.angle_deg[next], part);
    const double off = fit.scale * log.angle_deg[i] + fit.offset_deg - expected;
    residual.time_s.append(t);
    residual.angle_deg.append(off);
    residual.largest_deg = std::max(residual.largest_deg, std::abs(off));
    squares += off * off;
  }
  const auto count = double(residual.time_s.size());
  residual.rms_deg =
      count > 0 ? std::sqrt(squares / count) : std::numeric_limits<double>::quiet_NaN();
  if (count == 0) residual.largest_deg = residual.rms_deg;
  return residual;
}

std::optional<double> best_shift_s(const MeasuredLog& model, const MeasuredLog& log, LogFit fit) {
  if (model.time_s.size() < 2 || log.time_s.isEmpty()) return {};
  const MeasuredLog few = thinned_log(log);
  std::optional<double> best;
  double least = std::numeric_limits<double>::infinity();
  const auto look = [&](double from, double to, int steps) {
    for (int i = 0; i <= steps; ++i) {
      fit.shift_s = std::lerp(from, to, double(i) / steps);
      const LogResidual residual = residual_of(model, few, fit);
      if (2 * residual.time_s.size() < few.time_s.size() || !(residual.rms_deg < least)) continue;
      least = residual.rms_deg;
      best = fit.shift_s;
    }
  };
  const double length = model.time_s.back() - model.time_s.front();
  const double start = model.time_s.front() - few.time_s.front();  // both begin together
  double reach = length / 2, centre = start;
  look(centre - reach, centre + reach, kCoarse);
  for (int round = 0; round < 4 && best; ++round) {
    reach /= round == 0 ? kCoarse / 2.0 : kFine / 2.0;
    look(*best - 2 * reach, *best + 2 * reach, kFine);
  }
  return best;
}

}  // namespace gazewright
