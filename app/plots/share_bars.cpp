#include "app/plots/share_bars.h"

#include <algorithm>

#include "app/plots/format.h"
#include "app/plots/text.h"

namespace gazewright {
namespace {

/// The largest shares, and the rest as one where there is no room for all.
std::vector<ShareBar> fitting(const std::vector<ShareBar>& bars, std::size_t room) {
  if (bars.size() <= room) return bars;
  std::vector<ShareBar> shown(bars.begin(), bars.begin() + std::ptrdiff_t(room) - 1);
  ShareBar rest{Plots::tr("%1 more").arg(bars.size() - shown.size()), 0, {}, false};
  for (std::size_t i = shown.size(); i < bars.size(); ++i) rest.share += bars[i].share;
  shown.push_back(rest);
  return shown;
}

/// What is next to nothing without its many zeros.
QString percent_text(double share) {
  constexpr double kLeast = 0.001;
  if (share > 0 && share < kLeast) return QStringLiteral("< ") + format_value(kLeast, "1", "%", 2);
  return format_value(share, "1", "%", 2);
}

/// One axis' bars: a heading, then name, bar, value and percent for each.
struct Bars {
  QPainter& painter;
  const Theme& theme;
  double line;  ///< height of a row
  double text_width;

  /// @returns where it ends
  double paint(const QRectF& rect, const ShareList& list) const {
    painter.setPen(axis_text_colour(theme, list.axis));
    const QFontMetricsF metrics(painter.font());
    painter.drawText(QRectF(rect.left(), rect.top(), rect.width(), line),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(list.title, Qt::ElideRight, rect.width()));
    const auto room = static_cast<std::size_t>(std::max(2.0, rect.height() / line - 1));
    const std::vector<ShareBar> bars = fitting(list.bars, room);
    double largest = 0, y = rect.top() + line;
    for (const ShareBar& bar : bars) largest = std::max(largest, bar.share);
    for (const ShareBar& bar : bars) {
      row({rect.left(), y, rect.width(), line}, list.axis, bar, largest);
      y += line;
    }
    return y;
  }

  void row(const QRectF& rect, Axis axis, const ShareBar& bar, double largest) const {
    const QFontMetricsF metrics(painter.font());
    const double name_width = rect.width() * 0.40;
    const QString percent = percent_text(bar.share);
    const QString text = bar.value.isEmpty() ? percent : bar.value + QStringLiteral("  ") + percent;
    painter.setPen(theme.text);
    painter.drawText(QRectF(rect.left(), rect.top(), name_width - 8, rect.height()),
                     Qt::AlignRight | Qt::AlignVCenter,
                     metrics.elidedText(bar.name, Qt::ElideRight, name_width - 8));
    const double full = std::max(8.0, rect.width() - name_width - text_width);
    const double length = largest > 0 ? full * bar.share / largest : 0;
    const QRectF filled(rect.left() + name_width, rect.top() + 0.2 * line, std::max(1.0, length),
                        0.6 * line);
    const QColor colour = axis_colour(theme, axis);
    painter.fillRect(filled, bar.is_quiet ? QBrush(theme.neutral) : QBrush(colour));
    painter.setPen(theme.quiet);
    const double room = rect.right() - filled.right() - 6;
    painter.drawText(QRectF(filled.right() + 6, rect.top(), room, rect.height()),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.horizontalAdvance(text) <= room ? text : percent);
  }
};

}  // namespace

void paint_share_lists(QPainter& painter, const QRectF& rect, const std::vector<ShareList>& lists,
                       const QString& widest_value, const Theme& theme) {
  std::size_t rows = 0;
  for (const ShareList& list : lists) rows += list.bars.size() + 1;
  if (rows == 0) return;
  const QFontMetricsF metrics(painter.font());
  const double height = metrics.height();
  const double line = std::clamp(rect.height() / double(rows + 1), height, 1.7 * height);
  const Bars bars{painter, theme, line, metrics.horizontalAdvance(widest_value) + 8};
  double y = rect.top();
  for (const ShareList& list : lists) {
    const double share_of_height = double(list.bars.size() + 1) / double(rows);
    const double block = (rect.height() - line) * share_of_height;
    y = bars.paint({rect.left(), y, rect.width(), block}, list) + line / 2;
  }
}

}  // namespace gazewright
