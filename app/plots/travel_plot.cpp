#include "app/plots/travel_plot.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/csv.h"
#include "app/plots/dial_view.h"
#include "app/plots/text.h"
#include "app/plots/travel_dial.h"

namespace gazewright {

TravelPlot::TravelPlot(QWidget* parent)
    : PaintedPlot(PlotKind::travel, parent),
      dials_{new TravelDial(Axis::pan, this), new TravelDial(Axis::tilt, this)} {
  setFocusPolicy(Qt::NoFocus);  // its dials take it
  setInput({});
}

void TravelPlot::take(const PlotInput& input) {
  pictures_ = {};
  steps_ = {};
  const bool known = input.now != nullptr && input.rig != nullptr;
  message_ = known ? QString() : chart_parts::nothing_yet();
  for (const Axis axis : kAxes) {
    if (!known || !chart_parts::shows(input, axis)) continue;
    const auto i = std::size_t(axis);
    pictures_[i] = dial_picture(*input.rig, axis, input.now->of(axis).travel);
    dials_[i]->setPicture(*pictures_[i]);
    steps_[i] = input.now->of(axis).step;
    move_rad_[i] = input.now->of(axis).move_rad;
  }
  lay();
}

QRectF TravelPlot::placeOf(const QRectF& inside, Axis axis) const {
  if (!pictures_[std::size_t(axis)]) return {};
  const bool both = pictures_[0] && pictures_[1];
  const double width = inside.width() / (both ? 2 : 1);
  const bool second = axis == Axis::tilt && both;
  return {inside.left() + (second ? width : 0), inside.top(), width, inside.height()};
}

void TravelPlot::lay() {
  for (const Axis axis : kAxes) {
    const QRectF place = placeOf(inside(rect()), axis);
    dials_[std::size_t(axis)]->setVisible(!place.isEmpty());
    dials_[std::size_t(axis)]->setGeometry(place.toRect());
  }
}

void TravelPlot::resizeEvent(QResizeEvent*) { lay(); }

void TravelPlot::setTheme(const Theme& theme) {
  PaintedPlot::setTheme(theme);
  for (TravelDial* dial : dials_) dial->setTheme(theme);
}

/// The hands follow the step, which is centred on the rest pose.
void TravelPlot::setCursor(double time_s) {
  for (std::size_t i = 0; i < steps_.size(); ++i) {
    const auto& times = steps_[i].time_s;
    if (!pictures_[i]) continue;
    double& hand = pictures_[i]->angle_rad;
    hand = std::nan("");
    if (!times.empty() && std::isfinite(time_s)) {
      const auto after = std::lower_bound(times.begin(), times.end(), time_s);
      const auto at = std::min(std::size_t(after - times.begin()), times.size() - 1);
      hand = steps_[i].angle_rad[at] - move_rad_[i] / 2;
    }
    dials_[i]->setHand(hand);
  }
}

QString TravelPlot::words() const {
  QStringList lines;
  for (const auto& dial : pictures_) {
    if (dial) lines << axis_word(dial->axis) + QStringLiteral(": ") + dial_summary(*dial);
  }
  return lines.join(QStringLiteral(". "));
}

QString TravelPlot::csv() const {
  QString text =
      Plots::tr(
          "Axis,Centre / °,Stops / °,Soft limits / °,Cable / °,Usable / °,Home / °,Park / °") +
      '\n';
  for (const auto& dial : pictures_) {
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

void TravelPlot::paintPicture(QPainter& painter, const QRectF& inside, const Theme& theme) const {
  for (const auto& dial : pictures_) {
    if (dial) paint_travel_dial(painter, placeOf(inside, dial->axis), *dial, theme);
  }
}

void TravelPlot::paintEvent(QPaintEvent* event) {
  if (!message_.isEmpty()) PaintedPlot::paintEvent(event);  // else the dials paint themselves
}

}  // namespace gazewright
