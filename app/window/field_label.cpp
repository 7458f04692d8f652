#include "app/window/field_label.h"

#include <QCoreApplication>

#include "app/plots/text.h"

namespace gazewright {

QString field_label(const QuantityRef& field) {
  const QString label = worded(field.info->label);
  const std::string& path = field.path;
  if (!path.ends_with(']')) return label;
  const std::size_t index = static_cast<std::size_t>(path[path.size() - 2] - '0');
  constexpr const char* kCoordinates[] = {"x", "y", "z"};
  constexpr const char* kElements[] = {"xx", "yy", "zz", "xy", "xz", "yz"};
  if (path.find(".inertia[") != std::string::npos && index < 6) {
    return label + QStringLiteral(" ") + QLatin1String(kElements[index]);
  }
  if (path.starts_with("keep_outs[")) {
    return label + QStringLiteral(" ") +
           (index == 0 ? QCoreApplication::translate("FieldLabel", "from")
                       : QCoreApplication::translate("FieldLabel", "to"));
  }
  if (index >= 3) return label;
  return label + QStringLiteral(" ") + QLatin1String(kCoordinates[index]);
}

}  // namespace gazewright
