#include "app/plots/reach_picture.h"

#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"

namespace gazewright {
namespace {

QString the_map_follows() { return Plots::tr("The map follows when the drag ends."); }

/// Shares and times are figures, the rest is on the map.
QString map_summary(const ReachMap& map, const Analysis& analysis) {
  const auto degrees = [](double rad) { return format_value(rad, "rad", "deg"); };
  QStringList parts;
  const auto add = [&](const char* figure, const char* unit, const QString& text) {
    const Figure* found = analysis.figure(figure);
    if (found != nullptr && found->value)
      parts << text.arg(format_value(*found->value, found->info->si_unit, unit));
  };
  add("reach.sphere_share", "%", Plots::tr("Points at %1 of the sphere"));
  const Figure* share = analysis.figure("reach.view_share");
  if (analysis.is_quick && share != nullptr && share->is_aside)
    parts << Plots::tr("sees %1 of it").arg(QStringLiteral("…"));  // it comes after the drag
  else
    add("reach.view_share", "%", Plots::tr("sees %1 of it"));
  if (map.blind_rad > 0) parts << Plots::tr("blind wedge of %1").arg(degrees(map.blind_rad));
  add("pan.travel.long_way_time", "ms", Plots::tr("long way round it %1"));
  if (map.overhead_rad > 0)
    parts << Plots::tr("blind cone overhead of ±%1").arg(degrees(map.overhead_rad));
  for (const auto& contact : {map.clearance.down, map.clearance.up}) {
    if (contact)
      parts << Plots::tr("%1 meets %2 at tilt %3")
                   .arg(QString::fromStdString(contact->tilting),
                        QString::fromStdString(contact->other), degrees(contact->tilt_rad));
  }
  return parts.join(QStringLiteral(", "));
}

QString part_in_reach(const ReachPlace& place, const ReachMap& map) {
  switch (place.limit) {
    case PoseLimit::none:
      return {};
    case PoseLimit::pan_stop:
    case PoseLimit::pan_soft:
      return QStringLiteral("pan.stops");
    case PoseLimit::pan_cable:
      return QStringLiteral("pan.cable");
    case PoseLimit::tilt_cable:
      return QStringLiteral("tilt.cable");
    case PoseLimit::tilt_stop:
    case PoseLimit::tilt_soft:
    case PoseLimit::collision:
      return QStringLiteral("tilt.stops");
    case PoseLimit::keep_out:
      break;
  }
  for (std::size_t i = 0; i < map.keep_outs.size(); ++i) {
    if (is_inside(map.keep_outs[i], place.pan_rad, place.tilt_rad))
      return QStringLiteral("keep_outs[%1]").arg(map.keep_out_index[i]);
  }
  return QStringLiteral("keep_outs");
}

}  // namespace

QString limit_word(PoseLimit limit) {
  constexpr const char* kWords[] = {
      QT_TRANSLATE_NOOP("Plots", "reachable"),       QT_TRANSLATE_NOOP("Plots", "pan stop"),
      QT_TRANSLATE_NOOP("Plots", "pan cable"),       QT_TRANSLATE_NOOP("Plots", "pan soft limit"),
      QT_TRANSLATE_NOOP("Plots", "tilt stop"),       QT_TRANSLATE_NOOP("Plots", "tilt cable"),
      QT_TRANSLATE_NOOP("Plots", "tilt soft limit"), QT_TRANSLATE_NOOP("Plots", "collision"),
      QT_TRANSLATE_NOOP("Plots", "keep-out")};
  return Plots::tr(kWords[std::size_t(limit)]);
}

ReachPicture reach_picture(const PlotInput& input) {
  ReachPicture picture;
  picture.move_rad.fill(std::nan(""));
  if (input.reach == nullptr || input.rig == nullptr || input.now == nullptr) {
    picture.message = chart_parts::nothing_yet();
    return picture;
  }
  picture.map = *input.reach;
  picture.waits = input.reach_waits;
  picture.move_rad = {input.rig->task.pan_move_rad.value(), input.rig->task.tilt_move_rad.value()};
  picture.summary = picture.waits ? the_map_follows() : map_summary(picture.map, *input.now);
  if (!picture.map.because.empty())
    picture.message = picture.waits ? the_map_follows() : reason_text(picture.map.because);
  else if (picture.map.limit.empty())
    picture.message = picture.waits ? the_map_follows() : Plots::tr("The map is being worked out.");
  return picture;
}

std::optional<ReachPlace> reach_place(const ReachGrid& grid, const ReachMap& map, QPointF point) {
  if (!grid.inside().contains(point)) return std::nullopt;
  ReachPlace place{grid.pan_rad(point.x()), grid.tilt_rad(point.y()), PoseLimit::none, {}};
  const double step = map.pan_rad[1] - map.pan_rad[0];
  const auto nearest = [step](const std::vector<double>& angles, double angle) {
    const double at = std::round((angle - angles.front()) / step);
    return std::size_t(std::clamp(at, 0.0, double(angles.size() - 1)));
  };
  place.limit = map.at(nearest(map.pan_rad, place.pan_rad), nearest(map.tilt_rad, place.tilt_rad));
  place.part = part_in_reach(place, map);
  return place;
}

}  // namespace gazewright
