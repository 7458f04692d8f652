#include "app/window/missing.h"

#include <QCoreApplication>

#include "app/plots/text.h"
#include "core/analysis/missing.h"

namespace gazewright {
namespace {
constexpr qsizetype kNamed = 3;
}

QString missing_cost(const Analysis& analysis, std::string_view path) {
  const std::vector<const Figure*> waiting = figures_without(analysis, path);
  if (waiting.empty()) return {};
  QStringList names;
  for (const Figure* figure : waiting) {
    if (names.size() < kNamed) names << worded(figure->info->label);
  }
  const auto count = static_cast<qsizetype>(waiting.size());
  const QString list = names.join(QStringLiteral(", "));
  const auto tr = [count](const char* text) {
    return QCoreApplication::translate("Missing", text, nullptr, int(count));
  };
  if (count == 1) return tr("? missing: without it one figure is unknown: %1.").arg(list);
  if (count <= kNamed) return tr("? missing: without it %n figures are unknown: %1.").arg(list);
  return tr("? missing: without it %n figures are unknown: %1 and %2 more.")
      .arg(list)
      .arg(count - kNamed);
}

}  // namespace gazewright
