#include "app/plots/reach_plot.h"

#include <QFontMetricsF>
#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include "app/plots/charts.h"
#include "app/plots/csv.h"
#include "app/plots/format.h"
#include "app/plots/text.h"

namespace gazewright {

ReachPlot::ReachPlot(QWidget* parent) : PaintedPlot(PlotKind::reach, parent) { setInput({}); }

PlotLink ReachPlot::link() const {
  return {Plots::tr("Keep-outs…"), Plots::tr("Enter directions that the camera must stay out of"),
          QStringLiteral("keep_outs")};
}

QString ReachPlot::csv() const {
  QString text = Plots::tr("Pan / °,Tilt / °,Limit") + '\n';
  const ReachMap& map = picture_.map;
  for (std::size_t k = 0; k < map.tilt_rad.size() && !map.limit.empty(); ++k) {
    for (std::size_t i = 0; i < map.pan_rad.size(); ++i) {
      text += csv_number(map.pan_rad[i] * chart_parts::kDegPerRad) + ',' +
              csv_number(map.tilt_rad[k] * chart_parts::kDegPerRad) + ',' +
              limit_word(map.at(i, k)) + '\n';
    }
  }
  return text;
}

ReachGrid ReachPlot::grid() const {
  return reach_grid(inside(rect()), QFontMetricsF(font()), picture_);
}

std::optional<ReachPlace> ReachPlot::placeAt(QPointF point) const {
  if (!picture_.message.isEmpty() || picture_.waits) return std::nullopt;
  return reach_place(grid(), picture_.map, point);
}

void ReachPlot::paintPicture(QPainter& painter, const QRectF& inside, const Theme& theme) const {
  paint_reach(painter, inside, picture_, theme);
}

void ReachPlot::mousePressEvent(QMouseEvent* event) {
  const auto place = placeAt(event->position());
  if (event->button() == Qt::LeftButton && place && !place->part.isEmpty()) {
    emit partChosen(place->part);
  }
}

bool ReachPlot::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return PaintedPlot::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const auto place = placeAt(help->pos());
  QString text;
  if (place) {
    text = Plots::tr("pan %1, tilt %2: %3")
               .arg(format_value(place->pan_rad, "rad", "deg"),
                    format_value(place->tilt_rad, "rad", "deg"), limit_word(place->limit));
    if (!place->part.isEmpty()) text += Plots::tr(". Press to show its card.");
  }
  QToolTip::showText(help->globalPos(), text, this);
  return true;
}

}  // namespace gazewright
