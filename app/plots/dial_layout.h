#pragma once

#include <QFontMetricsF>
#include <QRectF>
#include <limits>
#include <optional>

#include "app/plots/theme.h"
#include "core/travel/marks.h"

/// What a travel dial shows and where it lies. No painting here.
namespace gazewright {

struct DialPicture {
  Axis axis = Axis::pan;
  Travel travel;
  std::vector<TravelMark> marks;
  double angle_rad = std::numeric_limits<double>::quiet_NaN();  ///< of the hand; NaN: none
  std::optional<TravelMark> active;                             ///< under the pointer or the keys

  const TravelMark* mark(const TravelMark& like) const;  ///< null where it is not shown
};
/// @pre none; defaults are filled in here.
DialPicture dial_picture(const Rig& rig, Axis axis, const Travel& travel);

QString mark_word(const TravelMark& mark);       ///< "soft"; short, for labels
QString mark_long_word(const TravelMark& mark);  ///< "soft limit"
/// The field behind a mark with its full path: "pan.stops.soft_inset".
std::string field_of(const DialPicture& picture, const TravelMark& mark);

/// A limit drawn as a ring: an arc up to one turn, a spiral beyond, its positive end inside.
struct DialTrack {
  double centre_rad = 0, span_rad = 0;
  double radius = 0, pitch = 0;  ///< in pixels; pitch 0: an arc
  double radius_at(double angle_rad) const {
    return radius - pitch * (angle_rad - centre_rad) / 6.283185307179586;
  }
};

/// Pan is seen from above with zero up and positive to the left (counter-clockwise); tilt from the
/// right with zero to the right and positive upwards.
struct DialLayout {
  enum class Labels { none, angles, words };

  Axis axis = Axis::pan;
  QPointF centre;
  double radius = 0;  ///< of the outermost ring; not above 0: no room
  double unit = 1;    ///< pixels for one step of thickness
  QRectF rect, title, note;
  Labels labels = Labels::none;
  DialTrack soft, cable;  ///< of the stops and soft limits, and of the cable
  double home_radius = 0, park_radius = 0;

  double page_rad(double angle_rad) const;  ///< counter-clockwise from three o'clock
  QPointF at(double angle_rad, double r) const;
  double angle_at(QPointF point) const;  ///< within ±π
  /// Where a mark is taken hold of.
  QPointF grip(const TravelMark& mark) const;
  double grip_radius(const TravelMark& mark) const;
};
DialLayout dial_layout(const QRectF& rect, const QFontMetricsF& metrics,
                       const DialPicture& picture);

/// A text beside the ring.
struct DialLabel {
  QString text;
  QRectF box;
};
/// Angles of the outermost limits beside the ring, none that would touch another.
std::vector<DialLabel> angle_labels(const DialLayout& layout, const QFontMetricsF& metrics,
                                    const DialPicture& picture);
/// An angle as the dial says it: "154°".
QString dial_angle_text(double angle_rad, int digits = 3);

/// The mark whose grip lies nearest to a point and within `reach` pixels.
std::optional<TravelMark> mark_at(const DialLayout& layout, const DialPicture& picture,
                                  QPointF point, double reach = 11);

}  // namespace gazewright
