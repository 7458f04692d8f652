#include <QApplication>

#include "app/plots/chart_canvas.h"
#include "app/plots/charts.h"
#include "app/plots/drawing.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "core/rig/fields.h"

namespace gazewright {
namespace {

constexpr double kPlotScale = 0.62;  ///< a plot's 12-pixel letters become 7.4 points
constexpr double kGap = 14, kTitle = 12, kPlotHeight = 138, kTallPlotHeight = 200,
                 kDrawingHeight = 168;

/// A painter state in which plots draw as on a screen.
struct PlotSpace {
  QPainter& painter;
  QRectF rect;

  PlotSpace(SheetPage& page, const QRectF& place) : painter(page.painter()) {
    painter.save();
    painter.translate(place.topLeft());
    painter.scale(kPlotScale, kPlotScale);
    rect = QRectF(QPointF(0, 0), place.size() / kPlotScale);
    QFont font = QApplication::font();
    font.setPixelSize(12);
    painter.setFont(plain_letters(font));
  }
  ~PlotSpace() { painter.restore(); }
  PlotSpace(const PlotSpace&) = delete;
  PlotSpace& operator=(const PlotSpace&) = delete;
};

/// The part of a cell under its title.
QRectF titled(SheetPage& page, const QRectF& cell, const QString& title) {
  page.text({cell.left(), cell.top(), cell.width(), kTitle}, Qt::AlignLeft | Qt::AlignVCenter,
            title, {8, true, page.theme().text});
  return cell.adjusted(0, kTitle, 0, 0);
}

void draw_plot(SheetPage& page, const QRectF& cell, PlotKind kind, const PlotInput& input,
               const QString& title) {
  const PlotSpace space(page, titled(page, cell, title));
  paint_plot(space.painter, space.rect, kind, input, page.theme());
}

struct Cells {
  QRectF left, right;
};
Cells cells_of(SheetPage& page, double height) {
  const QRectF row = page.take(height);
  page.skip(6);
  const double width = (row.width() - kGap) / 2;
  return {{row.left(), row.top(), width, height}, {row.right() - width, row.top(), width, height}};
}

/// The plot of pan and that of tilt side by side. @param title  with a place for the axis
void draw_each_axis(SheetPage& page, double height, PlotKind kind, PlotInput input,
                    const QString& title) {
  const Cells cells = cells_of(page, height);
  for (const Axis axis : kAxes) {
    input.only = axis;
    draw_plot(page, axis == Axis::pan ? cells.left : cells.right, kind, input,
              title.arg(axis_word(axis)));
  }
}

/// Under which conditions the plots hold. @param rig  with its defaults
QString conditions(const Rig& rig) {
  const auto ratio = [](const AxisParts& parts) {
    return parts.gearbox.ratio.si ? number_text(*parts.gearbox.ratio.si) : QStringLiteral("–");
  };
  return Plots::tr("Supply %1; pan %2 : 1, tilt %3 : 1; moves of %4 and %5; settled within ±%6 px.")
      .arg(format_value(rig.supply.voltage_V.si, "V", "V"), ratio(rig.pan), ratio(rig.tilt),
           format_value(rig.task.pan_move_rad.si, "rad", "deg"),
           format_value(rig.task.tilt_move_rad.si, "rad", "deg"),
           format_value(rig.task.settle_band_px.si, "1", "1"));
}

}  // namespace

void draw_views(SheetPage& page, const SheetContent& content) {
  const QString title = Plots::tr("Drawing to scale, at pan 0° and tilt 0°");
  const PlotSpace space(page, titled(page, page.take(kDrawingHeight), title));
  for (const DrawnView& drawn : all_views(space.rect, content.rig, 0, 0))
    paint_drawing(space.painter, drawn, content.rig, page.theme());
}

void draw_plots(SheetPage& page, const SheetContent& content) {
  page.ensure(50 + kPlotHeight);
  page.heading(Plots::tr("Plots"));
  page.paragraph(conditions(with_defaults(content.rig)), {7.5, false, page.theme().quiet});
  const ReachMap reach = reach_of(content.rig);
  const PlotInput input{.rig = &content.rig,
                        .now = &content.analysis,
                        .sweeps = content.sweeps,
                        .reach = &reach,
                        .doubts = content.options.doubts ? &*content.options.doubts : nullptr};
  Cells cells = cells_of(page, kPlotHeight);
  draw_plot(page, cells.left, PlotKind::step, input, plot_title(PlotKind::step));
  if (content.sweeps != nullptr) {
    draw_plot(page, cells.right, PlotKind::time_ratio, input, plot_title(PlotKind::time_ratio));
  } else {
    draw_plot(page, cells.right, PlotKind::speed, input, plot_title(PlotKind::speed));
  }
  draw_each_axis(page, kPlotHeight, PlotKind::torque_speed, input,
                 Plots::tr("%1, torque and speed with the step"));
  draw_each_axis(page, kPlotHeight, PlotKind::travel_speed, input,
                 Plots::tr("%1, speed over travel"));
  cells = cells_of(page, kPlotHeight);
  draw_plot(page, cells.left, PlotKind::current, input, plot_title(PlotKind::current));
  draw_plot(page, cells.right, PlotKind::travel, input, plot_title(PlotKind::travel));
  draw_each_axis(page, kTallPlotHeight, PlotKind::bode, input,
                 Plots::tr("%1, frequency response of the loops"));
  cells = cells_of(page, kPlotHeight);
  draw_plot(page, cells.left, PlotKind::reach, input, plot_title(PlotKind::reach));
  draw_plot(page, cells.right, PlotKind::inertia, input, plot_title(PlotKind::inertia));
  cells = cells_of(page, kPlotHeight);
  draw_plot(page, cells.left, PlotKind::both, input, plot_title(PlotKind::both));
  page.text(cells.right, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
            summary_of(chart_of(PlotKind::both, input)), {7.5, false, page.theme().text});
  cells = cells_of(page, kTallPlotHeight);
  draw_plot(page, cells.left, PlotKind::bus, input, plot_title(PlotKind::bus));
  page.text(cells.right, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
            summary_of(chart_of(PlotKind::bus, input)), {7.5, false, page.theme().text});
  cells = cells_of(page, kPlotHeight);
  draw_plot(page, cells.left, PlotKind::tracking, input, plot_title(PlotKind::tracking));
  draw_plot(page, cells.right, PlotKind::eye_time, input, plot_title(PlotKind::eye_time));
  draw_each_axis(page, kPlotHeight, PlotKind::pointing, input,
                 Plots::tr("%1, where the pointing error is"));
  cells = cells_of(page, kPlotHeight);
  draw_plot(page, cells.left, PlotKind::heat, input, plot_title(PlotKind::heat));
  page.text(cells.right, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
            summary_of(chart_of(PlotKind::heat, input)), {7.5, false, page.theme().text});
}

}  // namespace gazewright
