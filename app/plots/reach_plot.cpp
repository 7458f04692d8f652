#include <QPainter>

#include "app/plots/charts.h"
#include "app/plots/painted_parts.h"
#include "app/plots/reach_picture.h"
#include "app/plots/text.h"

namespace gazewright {

ReachPlot::ReachPlot(QWidget* parent) : PlotView(parent) {
  setAccessibleName(title());
  setInput({});
}

void ReachPlot::setInput(const PlotInput& input) {
  picture_ = reach_picture(input);
  setAccessibleDescription(summary());
  update();
}

void ReachPlot::setTheme(const Theme& theme) {
  theme_ = theme;
  update();
}

QString ReachPlot::summary() const {
  return picture_.message.isEmpty() ? reach_summary(picture_.map) : picture_.message;
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

void ReachPlot::paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const {
  painter.fillRect(rect, theme.card);
  painter.save();
  paint_reach(painter, rect.adjusted(4, 2, -4, -2), picture_, theme);
  painter.restore();
}

void ReachPlot::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintTo(painter, rect(), theme_);
}

}  // namespace gazewright
