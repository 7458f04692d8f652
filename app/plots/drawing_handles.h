#pragma once

#include "app/plots/drawing.h"
#include "core/analysis/gain_advice.h"

/// What in the drawing can be taken hold of, and which fields of the rig a move of it changes.
/// Geometry and words only: nothing is changed here.
namespace gazewright {

/// A body's centre in the plane of the view; the diameter of a ball, shell or tube; the tilt axis
/// across the page and up the page (each one coordinate of tilt.axis_at).
enum class HandleKind { body, diameter, axis_across, axis_up };

struct DrawingHandle {
  HandleKind kind = HandleKind::body;
  BodyRef body;  ///< of kinds body and diameter
  View view = View::side;
  QPointF at;

  bool is_same_as(const DrawingHandle& other) const {
    return kind == other.kind && body == other.body && view == other.view;
  }
  bool has_body() const { return kind == HandleKind::body || kind == HandleKind::diameter; }
};

/// Half of the side of a handle's hit area.
inline constexpr double kHandleReach = 12;

/// All handles of one view: the axis' first, then body by body. What has no place yet has none.
std::vector<DrawingHandle> drawing_handles(const Rig& rig, const DrawnView& drawn);

/// Fields and values once the handle has gone this far on the page from where it was in `from`.
/// Values are those of the fields, within their ranges; a wall or a bore keeps its room.
/// @param whole_mm  coordinates that move end on whole millimetres, else on whole micrometres
std::vector<FieldValue> handle_values(const Rig& from, const DrawnView& drawn,
                                      const DrawingHandle& handle, const QPointF& move_px,
                                      bool whole_mm);
/// Direction on the page in which the handle's value grows, [px] for a metre of it; of a body,
/// whose place has two, none.
std::optional<QPointF> handle_slope(const Rig& rig, const DrawnView& drawn,
                                    const DrawingHandle& handle);

QString handle_name(const Rig& rig, const DrawnView& drawn, const DrawingHandle& handle);
/// "38 mm, 0 mm, 2 mm"; "120 mm".
QString handle_value(const Rig& rig, const DrawnView& drawn, const DrawingHandle& handle);
/// The field to type it in.
std::string handle_field(const Rig& rig, const DrawnView& drawn, const DrawingHandle& handle);

/// The outlines of what a handle moves, for the ghost of a drag.
std::vector<QPolygonF> outlines_moved_by(const Rig& rig, const Projection& projection,
                                         const DrawingHandle& handle);

/// For a counterweight: the gravity torque that is left, and the mass that would cancel at its
/// place with what it would leave. Empty for other bodies.
QStringList counterweight_lines(const Rig& rig, const BodyRef& body);

/// The mark of a handle; `active`: under the pointer or the keys.
void paint_handle(QPainter& painter, const DrawingHandle& handle, const Theme& theme, bool active,
                  bool focused);

}  // namespace gazewright
