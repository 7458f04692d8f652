#pragma once

#include <QFontMetricsF>
#include <QPainter>

#include "app/plots/drawing.h"

/// What the painters of the drawing's parts share.
namespace gazewright {

struct DrawingPainter {
  QPainter& painter;
  const Rig& rig;   ///< as the user wrote it
  const Rig& full;  ///< with defaults
  const Theme& theme;
  const DrawnView& drawn;
  std::optional<BodyRef> selected;

  const Projection& projection() const { return drawn.projection; }
  const QRectF& rect() const { return drawn.rect; }
  /// Text on a ground of its own beside a point, kept within the view.
  void label(const QPointF& at, Qt::Alignment side, const QString& text,
             const QColor& colour) const;
};

/// What a side view shows of the stand: all of it, or its upper part where it would dwarf the rig.
struct DrawnStand {
  double height_m = 0, half_foot_m = 0;
  bool is_cut = false;
};
/// @param full  with defaults
DrawnStand drawn_stand(const Rig& full);
inline constexpr double kStandTop =
    0.45;  ///< its width at the mounting plane, in parts of its foot

void draw_stops(const DrawingPainter& p, Axis axis);
void draw_cables(const DrawingPainter& p);
void draw_view_cone(const DrawingPainter& p);

}  // namespace gazewright
