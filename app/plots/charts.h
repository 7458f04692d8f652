#pragma once

#include <array>

#include "app/plots/chart.h"
#include "core/units/angle.h"

/// The charts of an Analysis. Pure; units are converted here and nothing is computed.
namespace gazewright {

Chart step_chart(const PlotInput& input);
Chart speed_chart(const PlotInput& input);
Chart current_chart(const PlotInput& input);
Chart ratio_chart(const PlotInput& input);
Chart torque_speed_chart(const PlotInput& input);
Chart travel_speed_chart(const PlotInput& input);
Chart both_chart(const PlotInput& input);
/// Both halves of the frequency response, over the same frequencies.
Chart gain_chart(const PlotInput& input);
Chart phase_chart(const PlotInput& input);
Chart profile_chart(const PlotInput& input);
Chart tracking_chart(const PlotInput& input);
Chart eye_time_chart(const PlotInput& input);
Chart eye_speed_chart(const PlotInput& input);
Chart heat_chart(const PlotInput& input);
/// The bus: current, and voltage over the same time.
Chart bus_chart(const PlotInput& input);
Chart bus_voltage_chart(const PlotInput& input);
Chart gravity_chart(const PlotInput& input);

/// The chart of a kind that is one. @pre is_chart(kind)
Chart chart_of(PlotKind kind, const PlotInput& input);

QString profile_word(ProfileKind kind);  ///< "jerk-limited", translated

/// Ratios that gearboxes are sold in. Common practice, no source.
const QVector<double>& stock_ratios();

/// A figure's reason with paths replaced by the labels of their fields: "needs pan.motor.mass" ->
/// "Pan needs: motor, mass".
QString reason_text(const std::string& because);
/// The keys of the rig file that a reason names.
QStringList keys_in(const std::string& because);
/// A figure's value in its unit, or `otherwise` where there is none.
QString figure_text(const Figure* figure, const QString& otherwise = QStringLiteral("–"));

namespace chart_parts {
using gazewright::kDegPerRad;
inline constexpr double kMsPerS = 1000;

/// An empty chart over time, which starts the linked cursor.
Chart time_chart(PlotKind kind, const QString& y_name, const QString& y_unit);

bool shows(const PlotInput& input, Axis axis);
QString nothing_yet();  ///< instead of a plot while there is no analysis
/// A chart with its axes named and nothing in it.
struct AxisWords {
  QString name, unit;
};
Chart empty_chart(PlotKind kind, const AxisWords& x, const AxisWords& y);
/// The colours of the shown axes, first in the legend.
void add_axis_legend(Chart& chart, const PlotInput& input);
QVector<double> scaled(const std::vector<double>& values, double factor);
/// Why the plot of an axis is empty, from the figure that needs the same inputs.
QString missing_text(const Analysis& analysis, Axis axis, const char* figure);
std::string figure_id(Axis axis, const char* rest);
/// Limit lines at the values of the shown axes ("Pan drive limit"), one line where both are the
/// same ("Drive limit"); infinite and missing ones are left out. Lines that lie not far above the
/// data are brought into view.
struct LimitWords {
  QString shared, of_axis;  ///< the second with a place for the axis
};
void add_limits(Chart& chart, const PlotInput& input, const std::array<double, 2>& values,
                const LimitWords& words);
/// The step's angle with its uncertainty around it, and the entry of the legend that switches it.
void add_doubt_bands(Chart& chart, const PlotInput& input);
/// Strips of what limits the step, up to its settling, with room below the data; the sentences of
/// the analysis as readings.
void add_limit_stretches(Chart& chart, const PlotInput& input);
}  // namespace chart_parts

/// The entry of the legend for the shading around the step.
QString doubt_band_text();

/// "supply", as a strip names what limits the move.
QString limit_word(MoveLimit limit);

}  // namespace gazewright
