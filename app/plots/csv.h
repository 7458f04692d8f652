#pragma once

#include <QString>

/// Cells of CSV as RFC 4180 has them.
namespace gazewright {

QString csv_number(double value);  ///< every digit, a decimal point; nothing where not finite
QString csv_quoted(QString text);

}  // namespace gazewright
