#include "app/plots/csv.h"

#include <cmath>

namespace gazewright {

QString csv_number(double value) {
  return std::isfinite(value) ? QString::number(value, 'g', 17) : QString();
}

QString csv_quoted(QString text) { return '"' + text.replace('"', QStringLiteral("\"\"")) + '"'; }

}  // namespace gazewright
