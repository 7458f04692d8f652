#include <algorithm>

#include "app/plots/chart_plot.h"
#include "app/plots/charts.h"
#include "app/plots/picture_plot.h"
#include "app/plots/reach_plot.h"
#include "app/plots/stacked_plot.h"
#include "app/plots/text.h"
#include "app/plots/travel_plot.h"

/// The list of plots: what each is called and what makes it.
namespace gazewright {
namespace {

template <class Plot>
std::unique_ptr<PlotView> make(QWidget* parent) {
  return std::make_unique<Plot>(parent);
}

/// A chart, a chart above another, a picture, or a widget of its own.
struct KindRow {
  PlotKind kind;
  const char* key;
  const char* title;
  ChartPlot::Build chart = nullptr, below = nullptr;
  PicturePlot::Build picture = nullptr;
  std::unique_ptr<PlotView> (*widget)(QWidget* parent) = nullptr;
};
constexpr KindRow kKinds[]{
    {PlotKind::step, "step", QT_TRANSLATE_NOOP("Plots", "Step response"), step_chart},
    {PlotKind::time_ratio, "time-ratio", QT_TRANSLATE_NOOP("Plots", "Time against ratio"),
     ratio_chart},
    {PlotKind::torque_speed, "torque-speed",
     QT_TRANSLATE_NOOP("Plots", "Torque and speed, with the step"), torque_speed_chart},
    {PlotKind::speed, "speed", QT_TRANSLATE_NOOP("Plots", "Speed in the step"), speed_chart},
    {PlotKind::current, "current", QT_TRANSLATE_NOOP("Plots", "Current in the step"),
     current_chart},
    {PlotKind::both, "both", QT_TRANSLATE_NOOP("Plots", "Both axes at once"), both_chart},
    {PlotKind::bode, "frequency-response", QT_TRANSLATE_NOOP("Plots", "Frequency response"),
     gain_chart, phase_chart},
    {PlotKind::profiles, "profiles", QT_TRANSLATE_NOOP("Plots", "Move profiles"), profile_chart},
    {.kind = PlotKind::travel,
     .key = "travel",
     .title = QT_TRANSLATE_NOOP("Plots", "Travel"),
     .widget = make<TravelPlot>},
    {PlotKind::travel_speed, "travel-speed", QT_TRANSLATE_NOOP("Plots", "Speed over travel"),
     travel_speed_chart},
    {.kind = PlotKind::reach,
     .key = "reach",
     .title = QT_TRANSLATE_NOOP("Plots", "Reach"),
     .widget = make<ReachPlot>},
    {.kind = PlotKind::inertia,
     .key = "inertia",
     .title = QT_TRANSLATE_NOOP("Plots", "Where the inertia is"),
     .picture = inertia_picture},
    {PlotKind::tracking, "tracking", QT_TRANSLATE_NOOP("Plots", "Tracking error"), tracking_chart},
    {PlotKind::eye_time, "eye-time", QT_TRANSLATE_NOOP("Plots", "Against the eye: time"),
     eye_time_chart},
    {PlotKind::eye_speed, "eye-speed", QT_TRANSLATE_NOOP("Plots", "Against the eye: peak speed"),
     eye_speed_chart},
    {PlotKind::heat, "heat", QT_TRANSLATE_NOOP("Plots", "Temperature over the duty"), heat_chart},
    {PlotKind::bus, "bus", QT_TRANSLATE_NOOP("Plots", "Current and voltage of the bus"), bus_chart,
     bus_voltage_chart},
    {PlotKind::gravity, "gravity", QT_TRANSLATE_NOOP("Plots", "Gravity over the travel"),
     gravity_chart},
    {.kind = PlotKind::margins,
     .key = "margins",
     .title = QT_TRANSLATE_NOOP("Plots", "Margins of bearings and joints"),
     .picture = margins_picture},
    {.kind = PlotKind::pointing,
     .key = "pointing",
     .title = QT_TRANSLATE_NOOP("Plots", "Where the pointing error is"),
     .picture = pointing_picture},
};

const KindRow& row_of(PlotKind kind) { return *std::ranges::find(kKinds, kind, &KindRow::kind); }

}  // namespace

const std::vector<PlotKind>& plot_kinds() {
  static const std::vector<PlotKind> kinds = [] {
    std::vector<PlotKind> all;
    all.reserve(std::size(kKinds));
    for (const KindRow& row : kKinds) all.push_back(row.kind);
    return all;
  }();
  return kinds;
}

QString plot_title(PlotKind kind) { return Plots::tr(row_of(kind).title); }
QString plot_key(PlotKind kind) { return QString::fromLatin1(row_of(kind).key); }

std::optional<PlotKind> plot_kind(const QString& key) {
  for (const KindRow& row : kKinds) {
    if (key == QLatin1String(row.key)) return row.kind;
  }
  return {};
}

bool is_chart(PlotKind kind) { return row_of(kind).chart != nullptr; }
Chart chart_of(PlotKind kind, const PlotInput& input) { return row_of(kind).chart(input); }

std::unique_ptr<PlotView> make_plot(PlotKind kind, QWidget* parent) {
  const KindRow& row = row_of(kind);
  if (row.widget != nullptr) return row.widget(parent);
  if (row.picture != nullptr) return std::make_unique<PicturePlot>(kind, parent, row.picture);
  if (row.below != nullptr)
    return std::make_unique<StackedPlot>(kind, parent, row.chart, row.below);
  return std::make_unique<ChartPlot>(kind, parent);
}

void paint_plot(QPainter& painter, const QRectF& rect, PlotKind kind, const PlotInput& input,
                const Theme& theme) {
  const KindRow& row = row_of(kind);
  if (row.below != nullptr)
    return paint_stacked(painter, rect, row.chart(input), row.below(input), theme, painter.font());
  if (row.chart != nullptr)
    return paint_chart(painter, rect, row.chart(input), theme, painter.font());
  const auto plot = make_plot(kind);
  plot->setInput(input);
  plot->paintTo(painter, rect, theme);
}

}  // namespace gazewright
