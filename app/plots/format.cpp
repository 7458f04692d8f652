#include "app/plots/format.h"

#include <QLocale>
#include <algorithm>
#include <array>
#include <cmath>

#include "app/plots/text.h"
#include "core/analysis/say.h"
#include "core/units/units.h"

namespace gazewright {
namespace {

constexpr QChar kNarrowSpace(0x202F);
constexpr QChar kMinus(0x2212);
const QString kMissing = QStringLiteral("–");

/// A unit and how many of the family's base it is.
struct Scaled {
  std::string_view unit;
  double factor;
};
using Family = std::array<Scaled, 3>;
constexpr std::array kFamilies{
    Family{{{"uN.m", 1e-6}, {"mN.m", 1e-3}, {"N.m", 1}}},
    Family{{{"us", 1e-6}, {"ms", 1e-3}, {"s", 1}}},
    Family{{{"mW", 1e-3}, {"W", 1}, {"kW", 1e3}}},
    Family{{{"mJ", 1e-3}, {"J", 1}, {"kJ", 1e3}}},
    Family{{{"mA", 1e-3}, {"A", 1}, {"kA", 1e3}}},
    Family{{{"mV", 1e-3}, {"V", 1}, {"kV", 1e3}}},
    Family{{{"Hz", 1}, {"kHz", 1e3}, {"MHz", 1e6}}},
    Family{{{"um", 1e-6}, {"mm", 1e-3}, {"m", 1}}},
    Family{{{"mg", 1e-6}, {"g", 1e-3}, {"kg", 1}}},
    Family{{{"mN", 1e-3}, {"N", 1}, {"kN", 1e3}}},
    Family{{{"uohm", 1e-6}, {"mohm", 1e-3}, {"ohm", 1}}},
    Family{{{"uN.m.s/rad", 1e-6}, {"mN.m.s/rad", 1e-3}, {"N.m.s/rad", 1}}},
};

QString superscript(const QString& digits) {
  static const QString raised = QStringLiteral("⁰¹²³⁴⁵⁶⁷⁸⁹");
  QString text;
  for (const QChar c : digits) {
    if (c == '-') text += QChar(0x207B);
    if (c.isDigit()) text += raised[c.digitValue()];
  }
  return text;
}

/// 1.2×10⁻⁵, for what no prefix brings into reach.
QString power_text(double magnitude, int digits, const QLocale& locale) {
  const QString plain = QString::number(magnitude, 'e', digits - 1);
  const auto split = plain.indexOf('e');
  const double mantissa = plain.left(split).toDouble();
  return locale.toString(mantissa, 'g', digits) + QStringLiteral("×10") +
         superscript(QString::number(plain.mid(split + 1).toInt()));
}

QString magnitude_text(double magnitude, int digits) {
  QLocale locale;
  if (magnitude == 0) return locale.toString(0);
  if (magnitude >= 1e7 || magnitude < 1e-4) return power_text(magnitude, digits, locale);
  const int whole = static_cast<int>(std::floor(std::log10(magnitude))) + 1;
  const int decimals = std::max(0, digits - whole);
  if (magnitude < 10000) locale.setNumberOptions(QLocale::OmitGroupSeparator);
  QString text = locale.toString(magnitude, 'f', decimals);
  if (decimals == 0) return text;
  while (text.endsWith(locale.zeroDigit())) text.chop(1);
  if (text.endsWith(locale.decimalPoint())) text.chop(1);
  return text;
}

/// A finite number in the unit that reads best.
struct Shown {
  double value;
  std::string_view unit;
};

double factor_of(std::string_view unit) {
  for (const Family& family : kFamilies) {
    for (const Scaled& scaled : family) {
      if (scaled.unit == unit) return scaled.factor;
    }
  }
  return 1;
}

Shown shown(double value_si, std::string_view si_unit, std::string_view unit) {
  const double value = from_si(value_si, si_unit, unit);
  if (std::abs(value) < kDust) return {0, unit};
  const std::string_view best = reading_unit(value, unit);
  return {best == unit ? value : value * factor_of(unit) / factor_of(best), best};
}

bool stands_close(const QString& unit) { return unit == QStringLiteral("°"); }

}  // namespace

std::string_view reading_unit(double value, std::string_view unit) {
  const double magnitude = std::abs(value);
  if (magnitude == 0 || (magnitude >= 0.1 && magnitude < 10000)) return unit;
  for (const Family& family : kFamilies) {
    const auto own = std::find_if(family.begin(), family.end(),
                                  [unit](const Scaled& s) { return s.unit == unit; });
    if (own == family.end()) continue;
    const double base = magnitude * own->factor;
    const auto fits = std::find_if(family.rbegin(), family.rend(),
                                   [base](const Scaled& s) { return base >= s.factor; });
    return fits == family.rend() ? family.front().unit : fits->unit;
  }
  return unit;
}

QString number_text(double value, int digits) {
  if (std::isnan(value)) return kMissing;
  if (std::isinf(value)) return QStringLiteral("∞");
  const QString text = magnitude_text(std::abs(value), digits);
  const bool is_zero = std::none_of(text.begin(), text.end(),
                                    [](QChar c) { return c.isDigit() && c.digitValue() != 0; });
  return value < 0 && !is_zero ? kMinus + text : text;
}

QString with_unit(const QString& number, const QString& unit) {
  if (unit.isEmpty()) return number;
  return unit.startsWith(QStringLiteral("°")) ? number + unit : number + QChar(0x202F) + unit;
}

QString unit_text(std::string_view unit) {
  if (unit.empty() || unit == "1") return {};
  return QString::fromStdString(pretty_unit(unit));
}

QString format_number(double value_si, std::string_view si_unit, std::string_view unit,
                      int digits) {
  if (std::isnan(value_si)) return kMissing;
  if (std::isinf(value_si)) return Plots::tr("none");
  return number_text(shown(value_si, si_unit, unit).value, digits);
}

QString format_value(double value_si, std::string_view si_unit, std::string_view unit, int digits) {
  if (!std::isfinite(value_si)) return format_number(value_si, si_unit, unit, digits);
  const Shown best = shown(value_si, si_unit, unit);
  if (best.unit == "h" && best.value > kLongestLife_h)
    return QStringLiteral("> 10⁶") + kNarrowSpace + QLatin1Char('h');
  const QString number = number_text(best.value, digits), unit_part = unit_text(best.unit);
  if (unit_part.isEmpty()) return number;
  return stands_close(unit_part) ? number + unit_part : number + kNarrowSpace + unit_part;
}

QString format_value(std::optional<double> value_si, std::string_view si_unit,
                     std::string_view unit, int digits) {
  return value_si ? format_value(*value_si, si_unit, unit, digits) : kMissing;
}

QString margin_text(std::optional<double> margin) {
  if (!margin || std::isnan(*margin)) return kMissing;
  if (std::isinf(*margin)) return Plots::tr("none");
  const double percent = std::round(*margin * 100);
  if (percent > 999) return QStringLiteral("> 999") + kNarrowSpace + '%';
  const QString text = number_text(percent, 3) + kNarrowSpace + '%';
  return percent > 0 ? '+' + text : text;
}

}  // namespace gazewright
