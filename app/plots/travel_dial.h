#pragma once

#include <QPainter>

#include "app/plots/theme.h"
#include "core/travel/travel.h"

namespace gazewright {

/// Travel of one axis as a dial, to scale: hard stops, soft limits, cable, centre, what stays blind
/// and the hand at `angle_rad` (NaN: no hand). Pan is seen from above with zero up and positive to
/// the left (counter-clockwise); tilt from the right with zero to the right and positive upwards.
void paint_travel_dial(QPainter& painter, const QRectF& rect, const Travel& travel, Axis axis,
                       double angle_rad, const Theme& theme);

/// The same in words: "soft limits −148° … +148°, cable ±117°, blind 126°".
QString travel_summary(const Travel& travel);

}  // namespace gazewright
