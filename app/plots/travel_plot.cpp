#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/dial_view.h"
#include "app/plots/painted_parts.h"
#include "app/plots/painted_plot.h"
#include "app/plots/text.h"
#include "app/plots/travel_dial.h"

namespace gazewright {

namespace {

QRectF inside(const QRectF& rect) { return rect.adjusted(4, 4, -4, -4); }

}  // namespace

QRectF travel_place(const QRectF& rect, const TravelPicture& picture, Axis axis) {
  const auto shown = std::ranges::count_if(picture.dial, [](const auto& d) { return bool(d); });
  if (!picture.dial[std::size_t(axis)] || !picture.message.isEmpty()) return {};
  const double width = rect.width() / double(shown);
  const bool second = axis == Axis::tilt && shown == 2;
  return {rect.left() + (second ? width : 0), rect.top(), width, rect.height()};
}

void paint_travel(QPainter& painter, const QRectF& rect, const TravelPicture& picture,
                  const Theme& theme) {
  if (!picture.message.isEmpty()) return paint_message(painter, rect, picture.message, theme);
  for (const Axis axis : kAxes) {
    const auto& dial = picture.dial[std::size_t(axis)];
    if (dial) paint_travel_dial(painter, travel_place(rect, picture, axis), *dial, theme);
  }
}

TravelPlot::TravelPlot(QWidget* parent)
    : PlotView(parent), dials_{new TravelDial(Axis::pan, this), new TravelDial(Axis::tilt, this)} {
  setAccessibleName(title());
  setInput({});
}

void TravelPlot::setInput(const PlotInput& input) {
  picture_ = {};
  steps_ = {};
  if (input.now == nullptr || input.rig == nullptr) {
    picture_.message = Plots::tr("Nothing computed yet. Open or describe a rig.");
  }
  for (const Axis axis : kAxes) {
    if (!picture_.message.isEmpty() || !chart_parts::shows(input, axis)) continue;
    const auto i = std::size_t(axis);
    picture_.dial[i] = dial_picture(*input.rig, axis, input.now->of(axis).travel);
    dials_[i]->setPicture(*picture_.dial[i]);
    steps_[i] = input.now->of(axis).step;
    move_rad_[i] = input.now->of(axis).move_rad;
  }
  setAccessibleDescription(summary());
  lay();
  update();
}

void TravelPlot::lay() {
  for (const Axis axis : kAxes) {
    const QRectF place = travel_place(inside(rect()), picture_, axis);
    dials_[std::size_t(axis)]->setVisible(!place.isEmpty());
    dials_[std::size_t(axis)]->setGeometry(place.toRect());
  }
}

void TravelPlot::resizeEvent(QResizeEvent*) { lay(); }

void TravelPlot::setTheme(const Theme& theme) {
  theme_ = theme;
  for (TravelDial* dial : dials_) dial->setTheme(theme);
  update();
}

/// The hands follow the step, which is centred on the rest pose.
void TravelPlot::setCursor(double time_s) {
  for (std::size_t i = 0; i < steps_.size(); ++i) {
    const auto& times = steps_[i].time_s;
    if (!picture_.dial[i]) continue;
    double& hand = picture_.dial[i]->angle_rad;
    hand = std::nan("");
    if (!times.empty() && std::isfinite(time_s)) {
      const auto after = std::lower_bound(times.begin(), times.end(), time_s);
      const auto at = std::min(std::size_t(after - times.begin()), times.size() - 1);
      hand = steps_[i].angle_rad[at] - move_rad_[i] / 2;
    }
    dials_[i]->setHand(hand);
  }
}

QString TravelPlot::summary() const {
  if (!picture_.message.isEmpty()) return picture_.message;
  QStringList lines;
  for (const Axis axis : kAxes) {
    const auto& dial = picture_.dial[std::size_t(axis)];
    if (dial) lines << axis_word(axis) + QStringLiteral(": ") + dial_summary(*dial);
  }
  return lines.join(QStringLiteral(". "));
}

QString TravelPlot::csv() const {
  QString text =
      Plots::tr(
          "Axis,Centre / °,Stops / °,Soft limits / °,Cable / °,Usable / °,Home / °,Park / °") +
      '\n';
  for (const auto& dial : picture_.dial) {
    if (!dial) continue;
    const Travel& travel = dial->travel;
    QStringList cells{axis_word(dial->axis),
                      csv_number(travel.centre_rad * chart_parts::kDegPerRad)};
    for (const auto& span :
         {travel.stops_rad, travel.soft_rad, travel.cable_rad, travel.usable_rad}) {
      cells << (!span               ? QString()
                : std::isinf(*span) ? Plots::tr("none")
                                    : csv_number(*span * chart_parts::kDegPerRad));
    }
    for (const MarkKind kind : {MarkKind::home, MarkKind::park}) {
      const TravelMark* mark = dial->mark({kind, 0, 0, {}});
      cells << (mark ? csv_number(mark->angle_rad * chart_parts::kDegPerRad) : QString());
    }
    text += cells.join(',') + '\n';
  }
  return text;
}

void TravelPlot::paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const {
  painter.fillRect(rect, theme.card);
  paint_travel(painter, inside(rect), picture_, theme);
}

void TravelPlot::paintEvent(QPaintEvent*) {
  if (picture_.message.isEmpty()) return;  // the dials paint themselves
  QPainter painter(this);
  paintTo(painter, rect(), theme_);
}

}  // namespace gazewright
