#pragma once

#include <QPainter>

#include "app/plots/dial_layout.h"

namespace gazewright {

/// Travel of one axis as a dial, to scale: hard stops as bars with their bumpers beyond them, soft
/// limits as the ends of the coloured ring, the cable as a thin ring inside, home and park as marks
/// of their own, the blind sector hatched, and the hand at the present angle. More than a turn
/// winds inwards. The one painter of window and sheet.
void paint_travel_dial(QPainter& painter, const QRectF& rect, const DialPicture& picture,
                       const Theme& theme);

/// The same in words: "stops ±160°, soft limits ±154°, cable ±117°, blind 126°".
QString travel_summary(const Travel& travel);
/// With bumper, home and park: "…, bumper 2° beyond the stops, home 0°, park −40°".
QString dial_summary(const DialPicture& picture);

/// Texts round the dial: painted by paint_travel_dial().
void paint_dial_labels(QPainter& painter, const DialLayout& layout, const DialPicture& picture,
                       const Theme& theme);

}  // namespace gazewright
