#pragma once

#include <functional>

#include "app/plots/painted_plot.h"

namespace gazewright {

/// What a plot without the axes of a chart shows, as a value: it keeps nothing of its input.
struct PlotPicture {
  QString message;  ///< instead of the picture; empty: it is painted
  QString words;    ///< of the picture, as a summary
  std::function<QString()> csv;
  std::function<void(QPainter&, const QRectF& inside, const Theme&)> paint;
};

/// Shares of the inertia that the motor of each axis turns, largest first.
PlotPicture inertia_picture(const PlotInput& input);
/// Demand against capacity of what carries the load, the least margin first: a bar each way from
/// where it just holds.
PlotPicture margins_picture(const PlotInput& input);
/// Which errors make an axis point amiss, by their part of the sum of squares, largest first.
PlotPicture pointing_picture(const PlotInput& input);

/// Findings about bearings, joints, the gearbox's output, arm and stand.
bool is_about_loads(std::string_view finding_id);
QString pointing_word(const std::string& id);  ///< "Bearing play", translated

/// Such a picture as a plot.
class PicturePlot final : public PaintedPlot {
  Q_OBJECT

 public:
  using Build = PlotPicture (*)(const PlotInput&);

  PicturePlot(PlotKind kind, QWidget* parent, Build build);
  QString csv() const override { return picture_.csv(); }

 protected:
  void take(const PlotInput& input) override { picture_ = build_(input); }
  QString message() const override { return picture_.message; }
  QString words() const override { return picture_.words; }
  void paintPicture(QPainter& painter, const QRectF& inside, const Theme& theme) const override {
    picture_.paint(painter, inside.adjusted(2, 4, -2, -4), theme);
  }

 private:
  Build build_;
  PlotPicture picture_;
};

}  // namespace gazewright
