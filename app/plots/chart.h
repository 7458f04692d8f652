#pragma once

#include <QString>
#include <QVector>
#include <optional>

#include "app/plots/plot_view.h"

/// What a plot with two axes shows, as a plain value: built from an Analysis by the functions of
/// charts.h, drawn by ChartCanvas, written by csv_of. Numbers are in the units of the axis titles.
namespace gazewright {

struct Range {
  double lo = 0, hi = 1;
  bool operator==(const Range&) const = default;
};

/// How a line is drawn: `strong` is the thing itself, `dashed` its companion, `ghost` what was
/// before a drag, `fine` a path over time; `dotted` and `dash_dotted` are further companions; a
/// variant's lines are thinner, each in dashes of its own. `shaded` is a ribbon's.
enum class Line {
  strong,
  dashed,
  ghost,
  fine,
  dotted,
  dash_dotted,
  variant_1,
  variant_2,
  variant_3,
  variant_4,
  shaded
};

struct Series {
  QString name;                          ///< "Pan", for the readout and the CSV header
  std::optional<Axis> axis = Axis::pan;  ///< empty: in the colour of text
  Line line = Line::strong;
  QVector<double> x{}, y{};  ///< NaN leaves a gap
  QVector<double> time_s{};  ///< of each point of a path; empty where x is sorted
  bool filled = false;       ///< tinted down to zero
  bool is_path() const { return !time_s.isEmpty(); }
};

/// What lies between two lines, shaded. NaN leaves a gap.
struct Ribbon {
  QString name;  ///< "Pan", for the CSV header
  Axis axis = Axis::pan;
  Line line = Line::shaded;
  QVector<double> x{}, low{}, high{};
};

/// A tinted stretch of one axis.
struct Band {
  bool upright = false;  ///< true: a stretch of x over the whole height
  Range range;
  std::optional<Axis> axis = Axis::pan;  ///< empty: of both, grey
  QString label;
};

/// A stretch of x in a strip above the x axis, a row for each axis, told apart by word and
/// hatching.
enum class Hatching { none, rising, falling, crossed, upright, level, grid, dots };
struct Stretch {
  Axis axis = Axis::pan;
  Range range;
  Hatching hatching = Hatching::none;
  QString text;
};

/// A labelled place; a `ring` is one of a variant. `limit_*` are lines with hatching on the
/// forbidden side; `label` is only text.
struct Mark {
  enum class Kind { point, ring, label, upright, bracket, limit_above, limit_below, level };
  Kind kind = Kind::point;
  std::optional<Axis> axis;  ///< empty: of both
  double x = 0, y = 0;
  double x_end = 0;  ///< of a bracket
  QString text;
  QString text_in_radps{};  ///< instead of text over rad/s
  bool minor = false;       ///< without its text in a small plot; the readings have it
};

struct LegendEntry {
  QString text;
  std::optional<Axis> axis;  ///< empty: in the colour of text
  Line line = Line::strong;
  bool hidden = false;  ///< its lines are switched off
  QString brief{};      ///< the text where there is no room; empty: the entry is left out then
};

/// A variant that lies under the present design in a chart, and how its lines are drawn.
struct VariantLine {
  QString name;
  Line line = Line::variant_1;
};

struct Chart {
  PlotKind kind = PlotKind::step;
  QString x_title, y_title;  ///< "Time / ms"
  QString x_name, x_unit;    ///< "Time", "ms"
  QString y_name, y_unit;    ///< "Angle", "°"
  double x_per_s = 0;        ///< of the linked time cursor; 0: x is not time
  bool x_log = false;
  bool x_may_be_log = false;    ///< on demand: a time that reads well either way
  bool x_may_be_radps = false;  ///< on demand: Hz
  double y_step = 0;            ///< between ticks of y; 0: as it fits
  Range x, y;                   ///< the whole view
  QVector<Series> series;
  QVector<Ribbon> ribbons;
  QVector<Band> bands;
  QVector<Mark> marks;
  QVector<Stretch> stretches;
  QVector<double> ticks;  ///< stock choices on x
  QVector<LegendEntry> legend;
  QStringList notes;  ///< shown inside the plot: "Pan never settles"
  QString message;    ///< instead of an empty plot
  QVector<VariantLine> variants;
  QString less{};           ///< of a chart of differences: which variant all is less of
  QString no_difference{};  ///< why none to a variant can be shown
  QStringList readings;     ///< "Pan settles after 148 ms", for summary()
};

/// "Time / ms"; without a unit only the name.
QString axis_title(const QString& name, const QString& unit);
/// The smallest number of 1, 2, 2.5, 5 × 10ⁿ that is at least `value`.
double round_up(double value);
/// The range of all y between two x, with a twentieth of air; {0, 1} where there is none.
Range y_range(const Chart& chart, Range x);

/// Header "Time / ms,Pan angle / °" and a row per x; series that do not share the first one's x
/// bring a column of their own, ribbons two. Full precision, decimal point; a gap is an empty cell.
QString csv_of(const Chart& chart);
/// Its message, else its readings, its notes, and how many points are not numbers.
QString summary_of(const Chart& chart);

/// Points that leave a gap: y is NaN or infinite.
qsizetype gap_count(const Chart& chart);
/// Without the lines, marks and bands of the legend's entries of these names. The whole view and
/// the legend stay, the entries marked as hidden.
Chart without_hidden(Chart chart, const QStringList& names);
/// Whether a legend's entry is about this line or ribbon: one with an axis stands for all of it,
/// one without for all drawn alike.
template <class Part>
bool stands_for(const LegendEntry& entry, const Part& part) {
  return entry.axis ? entry.axis == std::optional<Axis>(part.axis) : part.line == entry.line;
}
/// Only the points between two x.
Chart part_of(Chart chart, Range x);
/// With a logarithmic x axis from the first point above zero on.
Chart with_log_x(Chart chart);
/// Over rad/s instead of Hz.
Chart with_radps(Chart chart);

}  // namespace gazewright
