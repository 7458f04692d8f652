#include "app/window/field_label.h"

#include <QCoreApplication>

namespace gazewright {

QString field_label(const QuantityRef& field) {
  const std::string_view text = field.info->label;
  const QString label = QString::fromUtf8(text.data(), qsizetype(text.size()));
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
