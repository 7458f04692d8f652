#include "app/plots/plot_view.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>
#include <algorithm>

#include "app/plots/chart_plot.h"
#include "app/plots/charts.h"
#include "app/plots/inertia_plot.h"
#include "app/plots/margins_plot.h"
#include "app/plots/pointing_plot.h"
#include "app/plots/reach_plot.h"
#include "app/plots/stacked_plot.h"
#include "app/plots/text.h"
#include "app/plots/travel_plot.h"

namespace gazewright {
namespace {

struct KindRow {
  PlotKind kind;
  const char* key;
  const char* title;
};
constexpr KindRow kKinds[]{
    {PlotKind::step, "step", QT_TRANSLATE_NOOP("Plots", "Step response")},
    {PlotKind::time_ratio, "time-ratio", QT_TRANSLATE_NOOP("Plots", "Time against ratio")},
    {PlotKind::torque_speed, "torque-speed",
     QT_TRANSLATE_NOOP("Plots", "Torque and speed, with the step")},
    {PlotKind::speed, "speed", QT_TRANSLATE_NOOP("Plots", "Speed in the step")},
    {PlotKind::current, "current", QT_TRANSLATE_NOOP("Plots", "Current in the step")},
    {PlotKind::both, "both", QT_TRANSLATE_NOOP("Plots", "Both axes at once")},
    {PlotKind::bode, "frequency-response", QT_TRANSLATE_NOOP("Plots", "Frequency response")},
    {PlotKind::profiles, "profiles", QT_TRANSLATE_NOOP("Plots", "Move profiles")},
    {PlotKind::travel, "travel", QT_TRANSLATE_NOOP("Plots", "Travel")},
    {PlotKind::travel_speed, "travel-speed", QT_TRANSLATE_NOOP("Plots", "Speed over travel")},
    {PlotKind::reach, "reach", QT_TRANSLATE_NOOP("Plots", "Reach")},
    {PlotKind::inertia, "inertia", QT_TRANSLATE_NOOP("Plots", "Where the inertia is")},
    {PlotKind::tracking, "tracking", QT_TRANSLATE_NOOP("Plots", "Tracking error")},
    {PlotKind::eye_time, "eye-time", QT_TRANSLATE_NOOP("Plots", "Against the eye: time")},
    {PlotKind::eye_speed, "eye-speed", QT_TRANSLATE_NOOP("Plots", "Against the eye: peak speed")},
    {PlotKind::heat, "heat", QT_TRANSLATE_NOOP("Plots", "Temperature over the duty")},
    {PlotKind::bus, "bus", QT_TRANSLATE_NOOP("Plots", "Current and voltage of the bus")},
    {PlotKind::gravity, "gravity", QT_TRANSLATE_NOOP("Plots", "Gravity over the travel")},
    {PlotKind::margins, "margins", QT_TRANSLATE_NOOP("Plots", "Margins of bearings and joints")},
    {PlotKind::pointing, "pointing", QT_TRANSLATE_NOOP("Plots", "Where the pointing error is")},
};

const KindRow& row_of(PlotKind kind) {
  return *std::find_if(std::begin(kKinds), std::end(kKinds),
                       [kind](const KindRow& row) { return row.kind == kind; });
}

constexpr double kTitleHeight = 24;

/// Title, then the plot, as exported.
void paint_titled(QPainter& painter, const PlotView& plot, QSizeF size) {
  const Theme theme = theme_for(ThemeKind::print);
  painter.fillRect(QRectF({0, 0}, size), theme.card);
  QFont font = pixel_font(plot.font());
  painter.setFont(font);
  painter.save();
  font.setBold(true);
  painter.setFont(font);
  painter.setPen(theme.text);
  painter.drawText(QRectF(6, 4, size.width() - 12, kTitleHeight - 4),
                   Qt::AlignLeft | Qt::AlignVCenter, plot.title());
  painter.restore();
  plot.paintTo(painter, {0, kTitleHeight, size.width(), size.height() - kTitleHeight}, theme);
}

QSizeF picture_size(const PlotView& plot) {
  return QSizeF(plot.size().expandedTo({480, 280})) + QSizeF(0, kTitleHeight);
}

QByteArray png_of(const PlotView& plot) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  plot.image().save(&buffer, "PNG");
  return bytes;
}

QByteArray svg_of(const PlotView& plot) {
  QBuffer buffer;
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setTitle(plot.title());
  generator.setResolution(96);
  const QSizeF size = picture_size(plot);
  generator.setSize(size.toSize());
  generator.setViewBox(QRectF({0, 0}, size));
  QPainter painter(&generator);
  paint_titled(painter, plot, size);
  painter.end();
  return buffer.data();
}

QByteArray pdf_of(const PlotView& plot) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  const QSizeF size = picture_size(plot);
  constexpr double kPointsPerPixel = 0.75;
  writer.setTitle(plot.title());
  writer.setPageSize(
      QPageSize(size * kPointsPerPixel, QPageSize::Point, {}, QPageSize::ExactMatch));
  writer.setPageMargins({0, 0, 0, 0});
  QPainter painter(&writer);
  const double scale = writer.width() / size.width();
  painter.scale(scale, scale);
  paint_titled(painter, plot, size);
  painter.end();
  return buffer.data();
}

}  // namespace

const std::vector<PlotKind>& plot_kinds() {
  static const std::vector<PlotKind> kinds = [] {
    std::vector<PlotKind> all;
    for (const KindRow& row : kKinds) all.push_back(row.kind);
    return all;
  }();
  return kinds;
}

bool is_chart(PlotKind kind) {
  switch (kind) {
    case PlotKind::travel:
    case PlotKind::reach:
    case PlotKind::inertia:
    case PlotKind::margins:
    case PlotKind::pointing:
      return false;
    default:
      return true;
  }
}

QString plot_title(PlotKind kind) { return Plots::tr(row_of(kind).title); }
QString plot_key(PlotKind kind) { return QString::fromLatin1(row_of(kind).key); }

std::optional<PlotKind> plot_kind(const QString& key) {
  for (const KindRow& row : kKinds) {
    if (key == QLatin1String(row.key)) return row.kind;
  }
  return {};
}

QImage PlotView::image(double scale) const {
  const QSizeF size = picture_size(*this);
  QImage image((size * scale).toSize(), QImage::Format_RGB32);
  image.setDevicePixelRatio(scale);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  paint_titled(painter, *this, size);
  return image;
}

std::optional<Diagnostic> PlotView::exportTo(const std::filesystem::path& file) const {
  const QString ending = QString::fromStdString(file.extension().string()).toLower();
  QByteArray bytes;
  if (ending == QStringLiteral(".png")) bytes = png_of(*this);
  if (ending == QStringLiteral(".svg")) bytes = svg_of(*this);
  if (ending == QStringLiteral(".pdf")) bytes = pdf_of(*this);
  if (ending == QStringLiteral(".csv")) bytes = csv().toUtf8();
  if (bytes.isEmpty()) {
    Diagnostic problem;
    problem.file = file.string();
    problem.problem = Plots::tr("a plot cannot be written as \"%1\"").arg(ending).toStdString();
    problem.fix = Plots::tr("end the name in .png, .svg, .pdf or .csv").toStdString();
    return problem;
  }
  return save_text(file, {bytes.constData(), std::size_t(bytes.size())});
}

std::unique_ptr<PlotView> make_plot(PlotKind kind, QWidget* parent) {
  if (kind == PlotKind::travel) return std::make_unique<TravelPlot>(parent);
  if (kind == PlotKind::reach) return std::make_unique<ReachPlot>(parent);
  if (kind == PlotKind::inertia) return std::make_unique<InertiaPlot>(parent);
  if (kind == PlotKind::margins) return std::make_unique<MarginsPlot>(parent);
  if (kind == PlotKind::pointing) return std::make_unique<PointingPlot>(parent);
  if (kind == PlotKind::bode)
    return std::make_unique<StackedPlot>(kind, parent, gain_chart, phase_chart);
  if (kind == PlotKind::bus)
    return std::make_unique<StackedPlot>(kind, parent, bus_chart, bus_voltage_chart);
  return std::make_unique<ChartPlot>(kind, parent);
}

void paint_plot(QPainter& painter, const QRectF& rect, PlotKind kind, const PlotInput& input,
                const Theme& theme) {
  if (kind == PlotKind::bode) {
    return paint_stacked(painter, rect, gain_chart(input), phase_chart(input), theme,
                         painter.font());
  }
  if (kind == PlotKind::bus) {
    return paint_stacked(painter, rect, bus_chart(input), bus_voltage_chart(input), theme,
                         painter.font());
  }
  if (is_chart(kind)) {
    return paint_chart(painter, rect, chart_of(kind, input), theme, painter.font());
  }
  const auto plot = make_plot(kind);
  plot->setInput(input);
  plot->paintTo(painter, rect, theme);
}

}  // namespace gazewright
