#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/reach_picture.h"
#include "app/plots/text.h"

/// How the reach map is painted.
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

/// Round angles of a range in radians, as far apart as their texts need. [deg]
std::vector<double> ticks_of(const Range& range_rad, double room_px, double needed_px) {
  const double lo = range_rad.lo * kDegPerRad, hi = range_rad.hi * kDegPerRad;
  double step = 360;
  for (const double tried : {180.0, 90.0, 45.0, 30.0, 15.0, 10.0}) {
    if (room_px * tried / (hi - lo) >= needed_px) step = tried;
  }
  std::vector<double> ticks;
  for (double at = std::ceil(lo / step - 1e-9) * step; at <= hi + 1e-9; at += step)
    ticks.push_back(at);
  return ticks;
}

struct Painting {
  QPainter& painter;
  const ReachGrid& grid;
  const Theme& theme;
  double line;
  std::vector<QRectF> taken{};

  void ticks() const {
    const QFontMetricsF metrics(painter.font());
    painter.setPen(theme.quiet);
    const QRectF& in = grid.inside();
    for (const double at : ticks_of(grid.pan(), in.width(), metrics.horizontalAdvance("−000°") + 8))
      painter.drawText(QRectF(grid.x(at / kDegPerRad) - 40, in.bottom() + 2, 80, line),
                       Qt::AlignHCenter, number_text(at) + QChar(0xB0));
    for (const double at : ticks_of(grid.tilt(), in.height(), 1.3 * line))
      painter.drawText(QRectF(in.left() - 64, grid.y(at / kDegPerRad) - line / 2, 60, line),
                       Qt::AlignRight, number_text(at) + QChar(0xB0));
  }

  void patch(const QRectF& box, PoseLimit limit) const {
    const Look look = look_of(limit, theme);
    painter.fillRect(box, limit == PoseLimit::none ? look.colour : theme.card);
    if (limit == PoseLimit::none) return;
    painter.fillRect(box, blended(look.colour, theme.card, 0.16));
    painter.fillRect(box, QBrush(blended(look.colour, theme.card, 0.6), look.pattern));
  }

  double widthOf(const QString& text) const {
    return QFontMetricsF(painter.font()).horizontalAdvance(text) + 8;
  }

  /// A word on its own ground, upright where the box is narrow; false where there is no room.
  bool word(const QRectF& box, const QString& text) {
    const double width = widthOf(text);
    const bool upright = box.width() < width && box.height() > width && box.width() >= line;
    if (!upright && (box.width() < width || box.height() < line)) return false;
    QRectF ground(0, 0, upright ? line : width, upright ? width : line);
    ground.moveCenter(box.center());
    return put(ground, text, upright);
  }

  /// The same beside a box that is too small for it.
  void wordBeside(const QRectF& box, const QString& text) {
    QRectF ground(0, 0, widthOf(text), line);
    ground.moveCenter(box.center());
    ground.moveLeft(box.right() + 3);
    if (ground.right() > grid.inside().right()) ground.moveRight(box.left() - 3);
    put(ground, text, false);
  }

  bool put(const QRectF& ground, const QString& text, bool upright) {
    for (const QRectF& other : taken) {
      if (other.intersects(ground)) return false;
    }
    taken.push_back(ground);
    painter.fillRect(ground, theme.card);
    painter.setPen(theme.text);
    painter.save();
    painter.translate(ground.center());
    if (upright) painter.rotate(-90);
    const double along = upright ? ground.height() : ground.width();
    painter.drawText(QRectF(-along / 2, -line / 2, along, line), Qt::AlignCenter, text);
    painter.restore();
    return true;
  }

  /// A frame around a keep-out, at each turn of pan where it counts.
  void frame(PoseWindow window) const {
    painter.setPen(QPen(theme.tight, 1.5));
    painter.setBrush(Qt::NoBrush);
    constexpr double kTurn_rad = 360 / kDegPerRad;
    const double first = std::ceil((grid.pan().lo - window.pan_most_rad) / kTurn_rad) * kTurn_rad;
    window.pan_least_rad += first;
    window.pan_most_rad += first;
    for (; window.pan_least_rad < grid.pan().hi;
         window.pan_least_rad += kTurn_rad, window.pan_most_rad += kTurn_rad) {
      const QRectF box = grid.window(window);
      if (box.width() > 0 && box.height() > 0) painter.drawRect(box);
    }
  }

  void move(Axis axis, double move_rad) const {
    if (!std::isfinite(move_rad)) return;
    const double half = move_rad / 2;
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
    painter.drawLine(QLineF(in.left(), y, grid.x(map.usable.pan_least_rad), y));
    painter.drawLine(QLineF(grid.x(map.usable.pan_most_rad), y, in.right(), y));
  }

  /// Over a map that is no longer that of the rig.
  void veil(const QString& why) const {
    QColor ground = theme.card;
    ground.setAlphaF(0.7F);
    painter.fillRect(grid.inside(), ground);
    painter.setPen(theme.text);
    painter.drawText(grid.inside(), int(Qt::AlignCenter) | int(Qt::TextWordWrap), why);
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
    p.word(largest, limit_word(limit));
  }
  for (std::size_t i = 0; i < map.keep_outs.size(); ++i) {
    const QString name = QString::fromStdString(map.keep_out_names[i]);
    const QString text = name.isEmpty() ? limit_word(PoseLimit::keep_out) : name;
    const QRectF box = p.grid.window(map.keep_outs[i]);
    if (!p.word(box, text)) p.wordBeside(box, text);
  }
}

double summary_height(const QRectF& rect, const QFontMetricsF& metrics,
                      const ReachPicture& picture) {
  const QRectF widest(0, 0, rect.width() - 8, 1e4);
  return metrics.boundingRect(widest, Qt::TextWordWrap, picture.summary).height() + 6;
}

}  // namespace

ReachGrid reach_grid(const QRectF& rect, const QFontMetricsF& metrics,
                     const ReachPicture& picture) {
  const double line = metrics.height(), widest = metrics.horizontalAdvance("−000°");
  const double below = summary_height(rect, metrics, picture) + line + 4;
  return {rect.adjusted(widest + 8, line + 2, -widest / 2, -below), picture.map};
}

void paint_reach(QPainter& painter, const QRectF& rect, const ReachPicture& picture,
                 const Theme& theme) {
  const ReachMap& map = picture.map;
  const QFontMetricsF metrics(painter.font());
  const double line = metrics.height(), below = summary_height(rect, metrics, picture);
  const ReachGrid grid = reach_grid(rect, metrics, picture);
  Painting p{painter, grid, theme, line};
  painter.setPen(theme.quiet);
  const QRectF top(rect.left(), rect.top(), rect.width() - 6, line);
  const QString across = Plots::tr("Pan / ° across; cross: the moves; thick line: blind");
  const QString up = Plots::tr("Tilt / °");
  painter.drawText(top, Qt::AlignLeft, up);
  painter.drawText(
      top, Qt::AlignRight,
      metrics.elidedText(across, Qt::ElideRight, top.width() - metrics.horizontalAdvance(up) - 12));
  painter.setRenderHint(QPainter::Antialiasing, false);
  const auto patches = patches_of(map);
  for (const ReachPatch& patch : patches) p.patch(grid.patch(map, patch), patch.limit);
  painter.setPen(theme.control);
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(grid.inside());
  p.blind(map);
  for (const PoseWindow& window : map.keep_outs) p.frame(window);
  painter.setRenderHint(QPainter::Antialiasing, true);
  paint_words(p, map, patches);
  for (const Axis axis : kAxes) p.move(axis, picture.move_rad[std::size_t(axis)]);
  p.ticks();
  if (picture.waits) p.veil(picture.summary);
  painter.setPen(theme.text);
  painter.drawText(QRectF(rect.left() + 4, rect.bottom() - below, rect.width() - 8, below),
                   int(Qt::AlignLeft) | int(Qt::AlignTop) | int(Qt::TextWordWrap), picture.summary);
}

}  // namespace gazewright
