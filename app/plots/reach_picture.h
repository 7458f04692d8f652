#pragma once

#include "app/plots/plot_view.h"
#include "app/plots/reach_grid.h"

class QFontMetricsF;
class QPainter;

namespace gazewright {

/// The reach map as a picture: pan across, tilt up, in degrees.
struct ReachPicture {
  ReachMap map;
  std::array<double, 2> move_rad{};  ///< of the task, by Axis; NaN: not known
  QString summary;                   ///< "Points at 61 % of the sphere, sees 74 % of it, ..."
  QString message;                   ///< instead of the map
  bool waits = false;                ///< for the end of a drag: the map is that of before
};
ReachPicture reach_picture(const PlotInput& input);

/// Where the map lies in a rectangle. @pre there is no message.
ReachGrid reach_grid(const QRectF& rect, const QFontMetricsF& metrics, const ReachPicture& picture);
/// Every region has a pattern and a word of its own besides its colour. @pre as above.
void paint_reach(QPainter& painter, const QRectF& rect, const ReachPicture& picture,
                 const Theme& theme);

/// "pan stop", "collision" ..., translated; "reachable" where nothing limits.
QString limit_word(PoseLimit limit);

/// The pose at a point of the map and what keeps it from being reached.
struct ReachPlace {
  double pan_rad = 0, tilt_rad = 0;
  PoseLimit limit = PoseLimit::none;
  QString part;  ///< whose card mends it; empty where it can be reached
};
std::optional<ReachPlace> reach_place(const ReachGrid& grid, const ReachMap& map, QPointF point);

}  // namespace gazewright
