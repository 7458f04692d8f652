#include "app/plots/reach_picture.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/painted_parts.h"
#include "app/plots/text.h"

namespace gazewright {
namespace {

using chart_parts::kDegPerRad;

struct Look {
  QColor colour;
  Qt::BrushStyle pattern;
};
Look look_of(PoseLimit limit, const Theme& theme) {
  switch (limit) {
    case PoseLimit::none:
      return {theme.band, Qt::SolidPattern};
    case PoseLimit::pan_stop:
      return {theme.pan, Qt::FDiagPattern};
    case PoseLimit::pan_cable:
      return {theme.pan, Qt::HorPattern};
    case PoseLimit::pan_soft:
      return {theme.pan, Qt::Dense6Pattern};
    case PoseLimit::tilt_stop:
      return {theme.tilt, Qt::BDiagPattern};
    case PoseLimit::tilt_cable:
      return {theme.tilt, Qt::VerPattern};
    case PoseLimit::tilt_soft:
      return {theme.tilt, Qt::Dense6Pattern};
    case PoseLimit::collision:
      return {theme.bad, Qt::DiagCrossPattern};
    case PoseLimit::keep_out:
      return {theme.tight, Qt::CrossPattern};
  }
  return {theme.neutral, Qt::NoBrush};
}

/// Degrees on the page.
class Grid {
 public:
  Grid(const QRectF& inside, const ReachMap& map) : inside_(inside) {
    pan_ = {map.pan_rad.front() * kDegPerRad, map.pan_rad.back() * kDegPerRad};
    tilt_ = {map.tilt_rad.front() * kDegPerRad, map.tilt_rad.back() * kDegPerRad};
    half_deg_ = (map.pan_rad[1] - map.pan_rad[0]) / 2 * kDegPerRad;
  }
  double x(double pan_deg) const {
    const double part = (pan_deg - pan_.lo) / (pan_.hi - pan_.lo);
    return inside_.left() + std::clamp(part, 0.0, 1.0) * inside_.width();
  }
  double y(double tilt_deg) const {
    const double part = (tilt_deg - tilt_.lo) / (tilt_.hi - tilt_.lo);
    return inside_.bottom() - std::clamp(part, 0.0, 1.0) * inside_.height();
  }
  QRectF window(const PoseWindow& w) const {
    return {QPointF(x(w.pan_least_rad * kDegPerRad), y(w.tilt_most_rad * kDegPerRad)),
            QPointF(x(w.pan_most_rad * kDegPerRad), y(w.tilt_least_rad * kDegPerRad))};
  }
  QRectF patch(const ReachMap& map, const ReachPatch& p) const {
    return {QPointF(x(map.pan_rad[p.pan_first] * kDegPerRad - half_deg_),
                    y(map.tilt_rad[p.tilt_last] * kDegPerRad + half_deg_)),
            QPointF(x(map.pan_rad[p.pan_last] * kDegPerRad + half_deg_),
                    y(map.tilt_rad[p.tilt_first] * kDegPerRad - half_deg_))};
  }
  const QRectF& inside() const { return inside_; }
  const Range& pan() const { return pan_; }
  const Range& tilt() const { return tilt_; }

 private:
  QRectF inside_;
  Range pan_, tilt_;
  double half_deg_ = 1;
};

double tick_step(const Range& range, double room_px, double needed_px) {
  for (const double step : {10.0, 15.0, 30.0, 45.0, 90.0, 180.0}) {
    if (room_px * step / (range.hi - range.lo) >= needed_px) return step;
  }
  return 360;
}

struct Painting {
  QPainter& painter;
  const Grid& grid;
  const Theme& theme;
  double line;
  std::vector<QRectF> taken{};

  void ticks() const {
    const QFontMetricsF metrics(painter.font());
    painter.setPen(theme.quiet);
    const QRectF& in = grid.inside();
    const double across = tick_step(grid.pan(), in.width(), metrics.horizontalAdvance("−000°") + 8);
    for (double at = std::ceil(grid.pan().lo / across) * across; at <= grid.pan().hi; at += across)
      painter.drawText(QRectF(grid.x(at) - 40, in.bottom() + 2, 80, line), Qt::AlignHCenter,
                       number_text(at) + QChar(0xB0));
    const double up = tick_step(grid.tilt(), in.height(), 1.3 * line);
    for (double at = std::ceil(grid.tilt().lo / up) * up; at <= grid.tilt().hi; at += up)
      painter.drawText(QRectF(in.left() - 64, grid.y(at) - line / 2, 60, line), Qt::AlignRight,
                       number_text(at) + QChar(0xB0));
  }

  void patch(const QRectF& box, PoseLimit limit) const {
    const Look look = look_of(limit, theme);
    painter.fillRect(box, limit == PoseLimit::none ? look.colour : theme.card);
    if (limit == PoseLimit::none) return;
    painter.fillRect(box, blended(look.colour, theme.card, 0.16));
    painter.fillRect(box, QBrush(blended(look.colour, theme.card, 0.6), look.pattern));
  }

  /// A word on its own ground, upright where the box is narrow; left out where there is no room.
  void word(const QRectF& box, const QString& text, const QColor& colour) {
    const double width = QFontMetricsF(painter.font()).horizontalAdvance(text) + 8;
    const bool upright = box.width() < width && box.height() > width && box.width() >= line;
    if (!upright && (box.width() < width || box.height() < line)) return;
    QRectF ground(0, 0, upright ? line : width, upright ? width : line);
    ground.moveCenter(box.center());
    for (const QRectF& other : taken) {
      if (other.intersects(ground)) return;
    }
    taken.push_back(ground);
    painter.fillRect(ground, theme.card);
    painter.setPen(colour);
    painter.save();
    painter.translate(ground.center());
    if (upright) painter.rotate(-90);
    painter.drawText(QRectF(-width / 2, -line / 2, width, line), Qt::AlignCenter, text);
    painter.restore();
  }

  void move(Axis axis, double move_rad) const {
    if (!std::isfinite(move_rad)) return;
    const double half = move_rad / 2 * kDegPerRad;
    const bool pan = axis == Axis::pan;
    const QPointF from(grid.x(pan ? -half : 0), grid.y(pan ? 0 : -half));
    const QPointF to(grid.x(pan ? half : 0), grid.y(pan ? 0 : half));
    const QPointF cap = pan ? QPointF(0, 4) : QPointF(4, 0);
    for (const auto& [colour, width] :
         {std::pair{theme.card, 5.0}, {axis_colour(theme, axis), 2.5}}) {
      painter.setPen(QPen(colour, width));
      painter.drawLine(from, to);
      for (const QPointF& end : {from, to}) painter.drawLine(end - cap, end + cap);
    }
  }

  /// A thick line along the bottom over the pan angles outside the usable travel.
  void blind(const ReachMap& map) const {
    if (map.blind_rad <= 0) return;
    const QRectF& in = grid.inside();
    painter.setPen(QPen(theme.bad, 4, Qt::SolidLine, Qt::FlatCap));
    const double y = in.bottom() - 2;
    painter.drawLine(QLineF(in.left(), y, grid.x(map.usable.pan_least_rad * kDegPerRad), y));
    painter.drawLine(QLineF(grid.x(map.usable.pan_most_rad * kDegPerRad), y, in.right(), y));
  }
};

/// The largest patch of each limit gets its word.
void paint_words(Painting& p, const ReachMap& map, const std::vector<ReachPatch>& patches) {
  for (std::size_t kind = 1; kind <= std::size_t(PoseLimit::keep_out); ++kind) {
    const auto limit = PoseLimit(kind);
    if (limit == PoseLimit::keep_out) continue;  // each has its name
    QRectF largest;
    for (const ReachPatch& patch : patches) {
      const QRectF box = p.grid.patch(map, patch);
      const bool larger = box.width() * box.height() > largest.width() * largest.height();
      if (patch.limit == limit && larger) largest = box;
    }
    p.word(largest, limit_word(limit), p.theme.text);
  }
  for (std::size_t i = 0; i < map.keep_outs.size(); ++i) {
    const QString name = QString::fromStdString(map.keep_out_names[i]);
    p.word(p.grid.window(map.keep_outs[i]), name.isEmpty() ? limit_word(PoseLimit::keep_out) : name,
           p.theme.text);
  }
}

}  // namespace

std::vector<ReachPatch> patches_of(const ReachMap& map) {
  std::vector<ReachPatch> done, open;
  for (std::size_t k = 0; k < map.tilt_rad.size(); ++k) {
    std::vector<ReachPatch> row;
    for (std::size_t i = 0; i < map.pan_rad.size(); ++i) {
      if (row.empty() || row.back().limit != map.at(i, k))
        row.push_back({map.at(i, k), i, i, k, k});
      row.back().pan_last = i;
    }
    for (ReachPatch& run : row) {
      const auto below = std::ranges::find_if(open, [&](const ReachPatch& patch) {
        return patch.limit == run.limit && patch.pan_first == run.pan_first &&
               patch.pan_last == run.pan_last;
      });
      if (below == open.end()) continue;
      run.tilt_first = below->tilt_first;
      open.erase(below);
    }
    done.insert(done.end(), open.begin(), open.end());
    open = std::move(row);
  }
  done.insert(done.end(), open.begin(), open.end());
  return done;
}

QString limit_word(PoseLimit limit) {
  constexpr const char* kWords[] = {
      QT_TRANSLATE_NOOP("Plots", "reachable"),       QT_TRANSLATE_NOOP("Plots", "pan stop"),
      QT_TRANSLATE_NOOP("Plots", "pan cable"),       QT_TRANSLATE_NOOP("Plots", "pan soft limit"),
      QT_TRANSLATE_NOOP("Plots", "tilt stop"),       QT_TRANSLATE_NOOP("Plots", "tilt cable"),
      QT_TRANSLATE_NOOP("Plots", "tilt soft limit"), QT_TRANSLATE_NOOP("Plots", "collision"),
      QT_TRANSLATE_NOOP("Plots", "keep-out")};
  return Plots::tr(kWords[std::size_t(limit)]);
}

QString reach_summary(const ReachMap& map) {
  const auto degrees = [](double rad) { return format_value(rad, "rad", "deg"); };
  QStringList parts{
      Plots::tr("Points at %1 of the sphere").arg(format_value(map.axis_share, "1", "%"))};
  if (map.view_share)
    parts << Plots::tr("sees %1 of it").arg(format_value(*map.view_share, "1", "%"));
  if (map.blind_rad > 0) parts << Plots::tr("blind wedge of %1").arg(degrees(map.blind_rad));
  if (map.blind_rad > 0 && map.long_way_s)
    parts << Plots::tr("long way round it %1").arg(format_value(*map.long_way_s, "s", "ms"));
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

ReachPicture reach_picture(const PlotInput& input) {
  ReachPicture picture;
  picture.move_rad.fill(std::nan(""));
  if (input.reach == nullptr || input.rig == nullptr) {
    picture.message = Plots::tr("Nothing computed yet. Open or describe a rig.");
    return picture;
  }
  picture.map = *input.reach;
  picture.move_rad = {input.rig->task.pan_move_rad.value(), input.rig->task.tilt_move_rad.value()};
  if (!picture.map.because.empty())
    picture.message = reason_text(picture.map.because);
  else if (picture.map.limit.empty())
    picture.message = Plots::tr("Nothing computed yet. Open or describe a rig.");
  return picture;
}

void paint_reach(QPainter& painter, const QRectF& rect, const ReachPicture& picture,
                 const Theme& theme) {
  if (!picture.message.isEmpty()) return paint_message(painter, rect, picture.message, theme);
  const ReachMap& map = picture.map;
  const QFontMetricsF metrics(painter.font());
  const double line = metrics.height(), left = metrics.horizontalAdvance("−000°") + 8;
  const QRectF widest(0, 0, rect.width() - 8, 1e4);
  const double below =  // the summary
      metrics.boundingRect(widest, Qt::TextWordWrap, reach_summary(map)).height() + 6;
  const Grid grid(rect.adjusted(left, line + 2, -6, -below - line - 4), map);
  Painting p{painter, grid, theme, line};
  painter.setPen(theme.quiet);
  painter.drawText(QRectF(rect.left(), rect.top(), rect.width(), line), Qt::AlignLeft,
                   Plots::tr("Tilt / °"));
  painter.drawText(QRectF(rect.left(), rect.top(), rect.width() - 6, line), Qt::AlignRight,
                   Plots::tr("Pan / ° across; cross: the moves; thick line: blind"));
  painter.setRenderHint(QPainter::Antialiasing, false);
  const auto patches = patches_of(map);
  for (const ReachPatch& patch : patches) p.patch(grid.patch(map, patch), patch.limit);
  painter.setPen(theme.control);
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(grid.inside());
  p.blind(map);
  painter.setRenderHint(QPainter::Antialiasing, true);
  paint_words(p, map, patches);
  for (const Axis axis : kAxes) p.move(axis, picture.move_rad[std::size_t(axis)]);
  p.ticks();
  painter.setPen(theme.text);
  painter.drawText(QRectF(rect.left() + 4, rect.bottom() - below, rect.width() - 8, below),
                   int(Qt::AlignLeft) | int(Qt::AlignTop) | int(Qt::TextWordWrap),
                   reach_summary(map));
}

}  // namespace gazewright
