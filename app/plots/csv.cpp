#include "app/plots/csv.h"

#include <cmath>
#include <utility>

namespace gazewright {

QString csv_number(double value) {
  return std::isfinite(value) ? QString::number(value, 'g', 17) : QString();
}

QString csv_quoted(QString text) { return '"' + text.replace('"', QStringLiteral("\"\"")) + '"'; }

QVector<QStringList> csv_rows(const QString& text) {
  QVector<QStringList> rows;
  QStringList row;
  QString cell;
  bool quoted = false;
  for (qsizetype i = 0; i < text.size(); ++i) {
    const QChar c = text[i];
    if (quoted) {
      if (c != '"') {
        cell += c;
      } else if (i + 1 < text.size() && text[i + 1] == '"') {
        cell += text[i++];
      } else {
        quoted = false;
      }
    } else if (c == '"') {
      quoted = true;
    } else if (c == ',' || c == '\n') {
      if (c == ',' || !row.isEmpty() || !cell.isEmpty()) row << cell;
      cell.clear();
      if (c == '\n') rows << std::exchange(row, {});
    } else {
      cell += c;
    }
  }
  if (!cell.isEmpty()) row << cell;
  if (!row.isEmpty()) rows << row;
  return rows;
}

QString with_tabs(const QString& csv) {
  QString text;
  for (const QStringList& row : csv_rows(csv)) text += row.join('\t') + '\n';
  return text;
}

}  // namespace gazewright
