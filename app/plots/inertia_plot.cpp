#include "app/plots/inertia_plot.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "core/rig/fields.h"

namespace gazewright {
namespace {

/// The largest shares, and the rest as one where there is no room for all.
std::vector<InertiaShare> fitting(const std::vector<InertiaShare>& shares, std::size_t room) {
  if (shares.size() <= room) return shares;
  std::vector<InertiaShare> shown(shares.begin(), shares.begin() + std::ptrdiff_t(room) - 1);
  InertiaShare rest{Plots::tr("%1 more").arg(shares.size() - shown.size()), 0, false};
  for (std::size_t i = shown.size(); i < shares.size(); ++i) {
    rest.inertia_kgm2 += shares[i].inertia_kgm2;
  }
  shown.push_back(rest);
  return shown;
}

/// One axis' bars: a heading, then name, bar, number and percent for each share.
struct Bars {
  QPainter& painter;
  const Theme& theme;
  double line;  ///< height of a row

  void paint(const QRectF& rect, Axis axis, const std::vector<InertiaShare>& shares) const {
    double sum = 0;
    for (const InertiaShare& share : shares) sum += share.inertia_kgm2;
    const double largest = shares.empty() ? 0 : shares.front().inertia_kgm2;
    painter.setPen(axis_text_colour(theme, axis));
    painter.drawText(
        QRectF(rect.left(), rect.top(), rect.width(), line), Qt::AlignLeft | Qt::AlignVCenter,
        Plots::tr("%1, %2 in all").arg(axis_word(axis), format_value(sum, "kg.m2", "g.m2")));
    const auto room = static_cast<std::size_t>(std::max(2.0, rect.height() / line - 1));
    double y = rect.top() + line;
    for (const InertiaShare& share : fitting(shares, room)) {
      row({rect.left(), y, rect.width(), line}, axis, share, sum, largest);
      y += line;
    }
  }

  void row(const QRectF& rect, Axis axis, const InertiaShare& share, double sum,
           double largest) const {
    const QFontMetricsF metrics(painter.font());
    const double name_width = rect.width() * 0.40;
    const QString text = format_value(share.inertia_kgm2, "kg.m2", "g.m2") + QStringLiteral("  ") +
                         format_value(sum > 0 ? share.inertia_kgm2 / sum : 0, "1", "%", 2);
    const double text_width = metrics.horizontalAdvance(QStringLiteral("00.00 g·m²  00.0 %")) + 8;
    painter.setPen(theme.text);
    painter.drawText(QRectF(rect.left(), rect.top(), name_width - 8, rect.height()),
                     Qt::AlignRight | Qt::AlignVCenter,
                     metrics.elidedText(share.name, Qt::ElideRight, name_width - 8));
    const double full = std::max(8.0, rect.width() - name_width - text_width);
    const double length = largest > 0 ? full * share.inertia_kgm2 / largest : 0;
    const QRectF bar(rect.left() + name_width, rect.top() + 0.2 * line, std::max(1.0, length),
                     0.6 * line);
    const QColor colour = axis_colour(theme, axis);
    painter.fillRect(bar, share.is_rotor ? QBrush(theme.neutral) : QBrush(colour));
    painter.setPen(theme.quiet);
    painter.drawText(QRectF(bar.right() + 6, rect.top(), text_width + 20, rect.height()),
                     Qt::AlignLeft | Qt::AlignVCenter, text);
  }
};

}  // namespace

InertiaPlot::InertiaPlot(QWidget* parent) : PaintedPlot(PlotKind::inertia, parent) { setInput({}); }

void InertiaPlot::take(const PlotInput& input) {
  shares_ = {};
  message_.clear();
  if (input.rig == nullptr) {
    message_ = chart_parts::nothing_yet();
    return;
  }
  const Rig rig = with_defaults(*input.rig);
  QStringList missing;
  for (const Axis axis : kAxes) {
    if (!chart_parts::shows(input, axis)) continue;
    const auto shares = inertia_shares(rig, axis);
    if (shares) {
      shares_[std::size_t(axis)] = *shares;
    } else {
      missing
          << Plots::tr("%1: a mass, a place, a shape or the gear is missing").arg(axis_word(axis));
    }
  }
  if (shares_[0].empty() && shares_[1].empty()) message_ = missing.join('\n');
}

QString InertiaPlot::words() const {
  QStringList lines;
  for (const Axis axis : kAxes) {
    for (const InertiaShare& share : shares_[std::size_t(axis)]) {
      lines << QStringLiteral("%1, %2: %3")
                   .arg(axis_word(axis), share.name,
                        format_value(share.inertia_kgm2, "kg.m2", "g.m2"));
    }
  }
  return lines.join(QStringLiteral(". "));
}

QString InertiaPlot::csv() const {
  QString text = Plots::tr("Axis,Part,Inertia / kg·m²") + '\n';
  for (const Axis axis : kAxes) {
    for (const InertiaShare& share : shares_[std::size_t(axis)]) {
      text += QStringLiteral("%1,\"%2\",%3\n")
                  .arg(axis_word(axis), QString(share.name).replace('"', QStringLiteral("\"\"")),
                       csv_number(share.inertia_kgm2));
    }
  }
  return text;
}

void InertiaPlot::paintPicture(QPainter& painter, const QRectF& inside, const Theme& theme) const {
  const QRectF rect = inside.adjusted(2, 4, -2, -4);
  std::size_t rows = 0;
  for (const auto& shares : shares_) rows += shares.empty() ? 0 : shares.size() + 1;
  const double height = QFontMetricsF(painter.font()).height();
  const double line = std::clamp(rect.height() / double(rows + 1), height, 1.7 * height);
  const Bars bars{painter, theme, line};
  double y = rect.top();
  for (const Axis axis : kAxes) {
    const auto& shares = shares_[std::size_t(axis)];
    if (shares.empty()) continue;
    const double share_of_height = double(shares.size() + 1) / double(rows);
    const double block = (rect.height() - line) * share_of_height;
    bars.paint({rect.left(), y, rect.width(), block}, axis, shares);
    y += std::min(block, line * double(shares.size() + 1)) + line / 2;
  }
}

}  // namespace gazewright
