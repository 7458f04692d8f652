#include "app/window/quantity_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>
#include <cmath>

#include "app/plots/format.h"
#include "app/plots/text.h"

namespace gazewright {
namespace {

constexpr int kMostDecimals = 6;
constexpr QChar kNarrowSpace(0x202F), kNoBreakSpace(0x00A0), kMinus(0x2212), kPlusMinus(0x00B1);

QString tr(const char* text) { return QCoreApplication::translate("FieldText", text); }

/// Where the number of an entry ends.
qsizetype number_end(const QString& text) {
  static const QRegularExpression number(R"(^\s*[-+]?[0-9]*[.,]?[0-9]*([eE][-+]?[0-9]+)?)");
  return number.match(text).capturedLength();
}

/// Typed text as a file would have it: plain spaces and minus, a decimal point.
std::string plain_text(QString text) {
  text.replace(kNarrowSpace, ' ').replace(kNoBreakSpace, ' ').replace(kMinus, '-');
  text = text.trimmed();
  if (QLocale().decimalPoint() == QStringLiteral(",")) {
    QString number = text.left(number_end(text));
    text = number.replace(',', '.') + text.mid(number_end(text));
  }
  return text.toStdString();
}

/// A written quantity as people read it in this locale.
QString readable(const std::string& written) {
  const QString text = QString::fromStdString(written);
  const qsizetype end = number_end(text);
  if (end == 0 || text == QStringLiteral("none")) return text;
  QString number = text.left(end).trimmed();
  number.replace('.', QLocale().decimalPoint()).replace('-', kMinus);
  const std::string unit = unit_of_written(written);
  if (unit.empty()) return number + text.mid(end);  // a plain number, or a percent
  const QString shown = QString::fromStdString(pretty_unit(unit));
  return shown == QStringLiteral("°") ? number + shown : number + kNarrowSpace + shown;
}

bool is_bare_number(const QString& text) {
  const QString plain = text.trimmed();
  return !plain.isEmpty() && number_end(plain) == plain.size();
}

}  // namespace

QString shown_quantity(const Quantity& quantity, const FieldInfo& info) {
  if (!quantity.si) return {};
  if (!quantity.written.empty()) return readable(quantity.written);
  return readable(written_quantity(*quantity.si, info, info.unit));
}

std::string shown_unit(const Quantity& quantity, const FieldInfo& info) {
  const std::string unit = unit_of_written(quantity.written);
  if (!unit.empty() || info.is_plain_number()) return unit;
  return std::string(info.unit);
}

QString range_text(const FieldInfo& info) {
  const auto shown = [&](double si) { return format_value(si, info.si_unit, info.unit, 6); };
  const bool hasLeast = std::isfinite(info.least), hasMost = std::isfinite(info.most);
  if (hasLeast && hasMost) {
    return info.above_least ? tr("more than %1, up to %2").arg(shown(info.least), shown(info.most))
                            : tr("%1 to %2").arg(shown(info.least), shown(info.most));
  }
  if (hasLeast) {
    return (info.above_least ? tr("more than %1") : tr("%1 or more")).arg(shown(info.least));
  }
  if (hasMost) return tr("up to %1").arg(shown(info.most));
  return {};
}

QString fallback_text(const FieldInfo& info) {
  if (!info.fallback_text.empty()) return worded(info.fallback_text);
  if (!info.fallback) return {};
  return format_value(*info.fallback, info.si_unit, info.unit, 4);
}

QString stepped(const QString& text, int steps, const FieldInfo& info) {
  const std::string plain = plain_text(text);
  const QString entry = QString::fromStdString(plain);
  const QString number = entry.left(number_end(entry)).trimmed();
  bool is_number = false;
  const double value = QLocale::c().toDouble(number, &is_number);
  if (!is_number) return {};
  // Just inside a power of ten the digits are those of the side that it goes to.
  const double towards = value * (1 + (value * steps < 0 ? -1e-9 : 1e-9));
  int digit = value == 0 ? 0 : int(std::floor(std::log10(std::abs(towards)))) - 1;
  if (info.whole) digit = std::max(digit, 0);
  const double step = std::pow(10, digit);
  const double after = (std::round(value / step) + steps) * step;
  const bool is_long = std::abs(digit) > kMostDecimals;
  const QString written =
      is_long ? QString::number(after, 'g', 3) : QString::number(after, 'f', std::max(0, -digit));
  return readable((written + entry.mid(number_end(entry))).toStdString());
}

std::variant<Quantity, UnitProblem> read_typed(const QString& text, const Quantity& before,
                                               const FieldInfo& info) {
  std::string plain = plain_text(text);
  if (plain.empty()) return Quantity{};
  if (is_bare_number(QString::fromStdString(plain)) && !info.is_plain_number()) {
    plain += " " + shown_unit(before, info);
  }
  auto read = read_quantity(plain, info);
  if (auto* quantity = std::get_if<Quantity>(&read)) {
    if (before.source != Source::by_default) quantity->source = before.source;
    if (!before.spread_written.empty()) {
      auto spread = read_spread(before.spread_written, info, *quantity->si);
      if (const double* si = std::get_if<double>(&spread)) {
        quantity->spread_si = *si;
        quantity->spread_written = before.spread_written;
      }
    }
  }
  return read;
}

std::variant<Quantity, UnitProblem> read_typed_spread(const QString& text, const Quantity& before,
                                                      const FieldInfo& info) {
  QString trimmed = text.trimmed();
  if (trimmed.startsWith(kPlusMinus)) trimmed.remove(0, 1);
  std::string plain = plain_text(trimmed);
  Quantity after = before;
  after.spread_si = 0;
  after.spread_written.clear();
  if (plain.empty()) return after;
  if (!before.si) {
    return UnitProblem{tr("A spread needs a value.").toStdString(),
                       tr("Enter the value first.").toStdString()};
  }
  if (is_bare_number(QString::fromStdString(plain))) plain += " %";
  auto spread = read_spread(plain, info, *before.si);
  if (auto* problem = std::get_if<UnitProblem>(&spread)) return *problem;
  after.spread_si = std::get<double>(spread);
  after.spread_written = plain;
  return after;
}

QString shown_spread(const Quantity& quantity, const FieldInfo& info) {
  if (!quantity.spread_written.empty()) return kPlusMinus + readable(quantity.spread_written);
  if (quantity.spread_si == 0) return {};
  return kPlusMinus + format_value(quantity.spread_si, info.si_unit, info.unit);
}

}  // namespace gazewright
