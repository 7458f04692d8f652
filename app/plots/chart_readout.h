#pragma once

#include <limits>
#include <vector>

#include "app/plots/chart.h"

/// What two cursors read from a chart.
namespace gazewright {

struct CursorPlace {
  double x = std::numeric_limits<double>::quiet_NaN();       ///< in units of the x axis
  double time_s = std::numeric_limits<double>::quiet_NaN();  ///< marks points on paths
};

/// One line at both cursors; NaN where a cursor is not set. Differences are A less B.
struct SeriesReading {
  QString name;
  std::optional<Axis> axis;
  bool is_path = false;
  double xa = 0, ya = 0, xb = 0, yb = 0;
  double dx() const { return xa - xb; }
  double dy() const { return ya - yb; }
  double slope() const { return dy() / dx(); }  ///< in units of the axes; NaN where dx is 0
};

struct Readout {
  double xa = 0, xb = 0;  ///< of the first line that is no path; NaN: none
  std::vector<SeriesReading> series;
};

/// The point of a series nearest to the cursor, or −1.
qsizetype sample_at(const Series& series, double x, double time_s);

/// The present design's lines first, then those of variants and of the design before.
Readout read(const Chart& chart, const CursorPlace& a, const CursorPlace& b);

/// Beside cursor A: "Pan  12.3°", with both cursors "Pan  12.3°  Δ 5.2°  130°/s".
QStringList readout_lines(const Chart& chart, const Readout& readout);
/// All of it as a table with tabs, numbers in the locale: name, A, B, A less B, slope.
QString readout_table(const Chart& chart, const Readout& readout);

}  // namespace gazewright
