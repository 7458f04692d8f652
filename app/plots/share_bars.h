#pragma once

#include <QPainter>
#include <QString>
#include <vector>

#include "app/plots/theme.h"

namespace gazewright {

/// One bar of a list sorted large to small: how much of the whole, and what stands behind it.
struct ShareBar {
  QString name;
  double share = 0;  ///< of the whole, 0 to 1
  QString value;     ///< "5.9 g·m²"; the percent is added
  bool is_quiet = false;
};
struct ShareList {
  Axis axis = Axis::pan;
  QString title;
  std::vector<ShareBar> bars;
};

/// Paints the lists one below the other; the smallest bars become "3 more" where there is no room.
/// @param widest_value  the longest text that a bar's value and percent make
void paint_share_lists(QPainter& painter, const QRectF& rect, const std::vector<ShareList>& lists,
                       const QString& widest_value, const Theme& theme);

}  // namespace gazewright
