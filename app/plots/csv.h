#pragma once

#include <QString>
#include <QStringList>
#include <QVector>

/// Cells of CSV as RFC 4180 has them.
namespace gazewright {

QString csv_number(double value);  ///< every digit, a decimal point; nothing where not finite
QString csv_quoted(QString text);
/// The cells of a text. An empty line is a row without cells.
QVector<QStringList> csv_rows(const QString& text);
/// The same table with tabs and without quotes, as spreadsheets take it from the clipboard.
QString with_tabs(const QString& csv);

}  // namespace gazewright
