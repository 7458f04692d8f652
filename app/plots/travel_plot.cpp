#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/painted_parts.h"
#include "app/plots/painted_plot.h"
#include "app/plots/text.h"
#include "app/plots/travel_dial.h"

namespace gazewright {

void paint_travel(QPainter& painter, const QRectF& rect, const TravelPicture& picture,
                  const Theme& theme) {
  if (!picture.message.isEmpty()) return paint_message(painter, rect, picture.message, theme);
  std::vector<Axis> shown;
  for (const Axis axis : kAxes) {
    if (picture.travel[std::size_t(axis)]) shown.push_back(axis);
  }
  const double line = QFontMetricsF(painter.font()).height();
  const double width = rect.width() / double(std::max<std::size_t>(1, shown.size()));
  for (std::size_t i = 0; i < shown.size(); ++i) {
    const auto index = std::size_t(shown[i]);
    const QRectF place(rect.left() + double(i) * width, rect.top(), width,
                       rect.height() - 3 * line);
    paint_travel_dial(painter, place, *picture.travel[index], shown[i], picture.angle_rad[index],
                      theme);
    painter.setPen(theme.quiet);
    painter.drawText(QRectF(place.left() + 4, place.bottom(), width - 8, 3 * line),
                     int(Qt::AlignHCenter) | int(Qt::AlignTop) | int(Qt::TextWordWrap),
                     travel_summary(*picture.travel[index]));
  }
}

TravelPlot::TravelPlot(QWidget* parent) : PlotView(parent) {
  setAccessibleName(title());
  setInput({});
}

void TravelPlot::setInput(const PlotInput& input) {
  picture_ = {};
  steps_ = {};
  picture_.angle_rad.fill(std::nan(""));
  if (input.now == nullptr) {
    picture_.message = Plots::tr("Nothing computed yet. Open or describe a rig.");
  }
  for (const Axis axis : kAxes) {
    if (input.now == nullptr || !chart_parts::shows(input, axis)) continue;
    const auto i = std::size_t(axis);
    picture_.travel[i] = input.now->of(axis).travel;
    steps_[i] = input.now->of(axis).step;
    move_rad_[i] = input.now->of(axis).move_rad;
  }
  setAccessibleDescription(summary());
  update();
}

void TravelPlot::setTheme(const Theme& theme) {
  theme_ = theme;
  update();
}

/// The hands follow the step, which is centred on the rest pose.
void TravelPlot::setCursor(double time_s) {
  for (std::size_t i = 0; i < steps_.size(); ++i) {
    const auto& times = steps_[i].time_s;
    picture_.angle_rad[i] = std::nan("");
    if (times.empty() || !std::isfinite(time_s)) continue;
    const auto after = std::lower_bound(times.begin(), times.end(), time_s);
    const auto at = std::min(std::size_t(after - times.begin()), times.size() - 1);
    picture_.angle_rad[i] = steps_[i].angle_rad[at] - move_rad_[i] / 2;
  }
  update();
}

QString TravelPlot::summary() const {
  if (!picture_.message.isEmpty()) return picture_.message;
  QStringList lines;
  for (const Axis axis : kAxes) {
    const auto& travel = picture_.travel[std::size_t(axis)];
    if (travel) lines << axis_word(axis) + QStringLiteral(": ") + travel_summary(*travel);
  }
  return lines.join(QStringLiteral(". "));
}

QString TravelPlot::csv() const {
  QString text = Plots::tr("Axis,Centre / °,Stops / °,Soft limits / °,Cable / °,Usable / °") + '\n';
  for (const Axis axis : kAxes) {
    const auto& travel = picture_.travel[std::size_t(axis)];
    if (!travel) continue;
    QStringList cells{axis_word(axis), csv_number(travel->centre_rad * chart_parts::kDegPerRad)};
    for (const auto& span :
         {travel->stops_rad, travel->soft_rad, travel->cable_rad, travel->usable_rad}) {
      cells << (!span               ? QString()
                : std::isinf(*span) ? Plots::tr("none")
                                    : csv_number(*span * chart_parts::kDegPerRad));
    }
    text += cells.join(',') + '\n';
  }
  return text;
}

void TravelPlot::paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const {
  painter.fillRect(rect, theme.card);
  paint_travel(painter, rect.adjusted(4, 4, -4, -4), picture_, theme);
}

void TravelPlot::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintTo(painter, rect(), theme_);
}

}  // namespace gazewright
