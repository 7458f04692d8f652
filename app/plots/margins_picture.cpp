#include <QPainter>
#include <algorithm>

#include "app/plots/charts.h"
#include "app/plots/csv.h"
#include "app/plots/format.h"
#include "app/plots/picture_plot.h"
#include "app/plots/text.h"

namespace gazewright {
namespace {

constexpr double kLeast = -1, kMost = 2;  // of the margins drawn; the numbers tell what lies beyond

struct Row {
  QString name;     ///< "Pan: Static safety of the bearings"
  QString numbers;  ///< "1.5 of 12"
  Verdict verdict = Verdict::unknown;
  std::optional<double> margin;
};

QString numbers_of(const Finding& finding) {
  if (!finding.demand || !finding.capacity) return reason_text(finding.because);
  return Plots::tr("%1 of %2")
      .arg(format_value(finding.demand, finding.si_unit, finding.unit),
           format_value(finding.capacity, finding.si_unit, finding.unit));
}

/// The findings come sorted: what fails first, then tight, unknown and holds.
std::vector<Row> rows_of(const PlotInput& input) {
  std::vector<Row> rows;
  if (input.now == nullptr) return rows;
  for (const Finding& finding : input.now->findings) {
    if (!is_about_loads(finding.id)) continue;
    if (finding.axis && !chart_parts::shows(input, *finding.axis)) continue;
    if (finding.verdict == Verdict::holds && !finding.margin) continue;  // nothing to check
    const QString what = QString::fromStdString(finding.what);
    rows.push_back({finding.axis ? Plots::tr("%1: %2").arg(axis_word(*finding.axis), what) : what,
                    numbers_of(finding), finding.verdict, finding.margin});
  }
  return rows;
}

QString rows_words(const std::vector<Row>& rows) {
  QStringList lines;
  for (const Row& row : rows)
    lines << QStringLiteral("%1: %2, %3, %4")
                 .arg(row.name, verdict_word(row.verdict), row.numbers, margin_text(row.margin));
  return lines.join(QStringLiteral(". "));
}

QString rows_csv(const std::vector<Row>& rows) {
  QString text = Plots::tr("Check,Verdict,Demand and capacity,Margin") + '\n';
  for (const Row& row : rows)
    text += csv_quoted(row.name) + ',' + verdict_word(row.verdict) + ',' + csv_quoted(row.numbers) +
            ',' + (row.margin ? csv_number(*row.margin) : QString()) + '\n';
  return text;
}

void paint_row(QPainter& painter, const QRectF& rect, const Theme& theme, const Row& row) {
  const QFontMetricsF metrics(painter.font());
  const double percent = metrics.horizontalAdvance(QStringLiteral("> 999 %")) + 8;
  const double numbers = rect.width() * 0.24, name = rect.width() * 0.42;
  const auto text = [&](double left, double width, int side, const QColor& colour,
                        const QString& what) {
    painter.setPen(colour);
    painter.drawText(QRectF(left, rect.top(), width, rect.height()), side | int(Qt::AlignVCenter),
                     metrics.elidedText(what, Qt::ElideRight, width));
  };
  const QColor colour = verdict_colour(theme, row.verdict);
  const double symbol = 1.3 * metrics.height();
  text(rect.left(), symbol, int(Qt::AlignLeft), colour, verdict_symbol(row.verdict));
  text(rect.left() + symbol, name - symbol - 8, int(Qt::AlignLeft), theme.text, row.name);
  const QRectF track(rect.left() + name, rect.top() + 0.22 * rect.height(),
                     std::max(12.0, rect.width() - name - numbers - percent - 14),
                     0.56 * rect.height());
  painter.fillRect(track, theme.grid);
  const double per_unit = track.width() / (kMost - kLeast);
  const double zero = track.left() - kLeast * per_unit;
  if (row.margin) {
    const double length = std::clamp(*row.margin, kLeast, kMost) * per_unit;
    painter.fillRect(
        QRectF(zero + std::min(0.0, length), track.top(), std::abs(length), track.height()),
        colour);
  }
  painter.setPen(QPen(theme.control, 1));
  painter.drawLine(QLineF(zero, rect.top() + 1, zero, rect.bottom() - 1));
  text(track.right() + 6, percent, int(Qt::AlignRight), colour, margin_text(row.margin));
  text(rect.right() - numbers, numbers, int(Qt::AlignLeft), theme.quiet, row.numbers);
}

void paint_rows(QPainter& painter, const QRectF& rect, const Theme& theme,
                const std::vector<Row>& rows) {
  const double height = QFontMetricsF(painter.font()).height();
  const double line = std::clamp(rect.height() / double(rows.size() + 1), height, 1.8 * height);
  const auto room = std::size_t(std::max(1.0, rect.height() / line));
  const std::size_t shown = rows.size() <= room ? rows.size() : room - 1;
  double y = rect.top();
  for (std::size_t i = 0; i < shown; ++i, y += line)
    paint_row(painter, {rect.left(), y, rect.width(), line}, theme, rows[i]);
  if (shown == rows.size()) return;
  painter.setPen(theme.quiet);
  painter.drawText(QRectF(rect.left(), y, rect.width(), line), Qt::AlignCenter,
                   Plots::tr("%1 more, all with more margin").arg(rows.size() - shown));
}

}  // namespace

bool is_about_loads(std::string_view id) {
  return id.find(".bearing.") != std::string_view::npos ||
         id.find(".joint.") != std::string_view::npos || id.starts_with("arm.") ||
         id.starts_with("stand.");
}

PlotPicture margins_picture(const PlotInput& input) {
  std::vector<Row> rows = rows_of(input);
  PlotPicture picture;
  if (input.now == nullptr) {
    picture.message = chart_parts::nothing_yet();
  } else if (rows.empty()) {
    picture.message = Plots::tr(
        "Nothing to compare yet. Enter the ratings of the bearings, the screws, the arm or what "
        "the gearbox's output bears on their cards.");
  }
  picture.words = rows_words(rows);
  picture.csv = [rows] { return rows_csv(rows); };
  picture.paint = [rows = std::move(rows)](QPainter& painter, const QRectF& inside,
                                           const Theme& theme) {
    paint_rows(painter, inside, theme, rows);
  };
  return picture;
}

}  // namespace gazewright
