#pragma once

#include "app/plots/plot_view.h"
#include "core/analysis/reach.h"

class QPainter;

namespace gazewright {

/// The reach map as a picture: pan across, tilt up, in degrees.
struct ReachPicture {
  ReachMap map;
  std::array<double, 2> move_rad{};  ///< of the task, by Axis; NaN: not known
  QString message;
};
ReachPicture reach_picture(const PlotInput& input);
/// Every region has a pattern and a word of its own besides its colour.
void paint_reach(QPainter& painter, const QRectF& rect, const ReachPicture& picture,
                 const Theme& theme);

/// "Points at 61 % of the sphere and sees 74 %; ..."
QString reach_summary(const ReachMap& map);
/// "pan stop", "collision" ..., translated; "reachable" where nothing limits.
QString limit_word(PoseLimit limit);

/// A rectangle of poses with the same limit, as indices of the grid, ends included.
struct ReachPatch {
  PoseLimit limit = PoseLimit::none;
  std::size_t pan_first = 0, pan_last = 0, tilt_first = 0, tilt_last = 0;
};
/// The whole map as such rectangles, none over another.
std::vector<ReachPatch> patches_of(const ReachMap& map);

class ReachPlot final : public PlotView {
  Q_OBJECT

 public:
  explicit ReachPlot(QWidget* parent);
  PlotKind kind() const override { return PlotKind::reach; }
  void setInput(const PlotInput& input) override;
  void setTheme(const Theme& theme) override;
  void setCursor(double) override {}
  QString summary() const override;
  QString csv() const override;
  void paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const override;
  QSize sizeHint() const override { return {360, 220}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  ReachPicture picture_;
  Theme theme_ = theme_for(ThemeKind::light);
};

}  // namespace gazewright
