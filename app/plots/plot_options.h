#pragma once

#include <QString>
#include <QStringList>

namespace gazewright {

/// How the user wants a plot shown. Plots without axes take no notice.
struct PlotOptions {
  bool fixed_scale = false;  ///< an edit moves the curve instead of the scale
  bool grid = true;
  bool log_time = false;   ///< where the chart may have it
  bool radps = false;      ///< frequencies in rad/s instead of Hz
  bool held = false;       ///< the cursor stays where it is when the pointer moves
  QString less_variant{};  ///< shown is the difference to the variant of this name; empty: none
  QStringList hidden{};    ///< entries of the legend whose lines are switched off
  bool operator==(const PlotOptions&) const = default;
};

/// How a picture is written. Letters and lines keep their size on paper.
struct PictureOptions {
  double width_mm = 0, height_mm = 0;  ///< 0: as large as on the screen
  double dpi = 192;                    ///< of pixels
  bool transparent = false;            ///< no ground; else white
  QString subject{};                   ///< axis and variant, after the title
  QString caption{};                   ///< conditions, in small type under the plot
};

}  // namespace gazewright
