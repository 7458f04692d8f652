#include "app/plots/setting_text.h"

#include <QStringList>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "core/analysis/explain.h"

namespace gazewright {
namespace {

/// What is counted is not rounded.
QString shown(double value, const DriveSetting& setting) {
  return format_value(value, setting.si_unit, setting.unit, setting.unit == "1" ? 9 : 4);
}

/// "loop.speed_gain" of "pan.loop.speed_gain".
QString without_axis(const std::string& path) {
  const std::string pattern = id_pattern(path);
  constexpr std::string_view kAxis = "<axis>.";
  return QString::fromStdString(pattern.starts_with(kAxis) ? pattern.substr(kAxis.size())
                                                           : pattern);
}

}  // namespace

QString setting_text(const std::optional<DriveSetting>& setting) {
  if (!setting) return QStringLiteral("–");
  return setting->value ? shown(*setting->value, *setting) : reason_text(setting->text);
}

QString first_text(const std::optional<DriveSetting>& setting) {
  if (!setting || !setting->value) return QStringLiteral("–");
  return setting->first ? shown(*setting->first, *setting) : Plots::tr("same");
}

QString setting_remark(const std::optional<DriveSetting>& setting) {
  return setting && setting->value ? reason_text(setting->text) : QString();
}

QString setting_from(const SettingPair& pair) {
  QStringList from;
  for (const auto& setting : pair.of) {
    if (!setting || setting->from.empty()) continue;
    if (const QString path = without_axis(setting->from); !from.contains(path)) from << path;
  }
  QString text = from.join(QStringLiteral(", "));
  const QString formula = worded(pair.any().formula);
  if (!formula.isEmpty()) text += (text.isEmpty() ? "" : ": ") + formula;
  return text;
}

}  // namespace gazewright
