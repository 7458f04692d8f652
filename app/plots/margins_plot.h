#pragma once

#include <vector>

#include "app/plots/painted_plot.h"

namespace gazewright {

/// Findings about bearings, joints, the gearbox's output, arm and stand.
bool is_about_loads(std::string_view finding_id);

/// Demand against capacity of what carries the load, the least margin first: a bar each way from
/// where it just holds.
class MarginsPlot final : public PaintedPlot {
  Q_OBJECT

 public:
  explicit MarginsPlot(QWidget* parent);
  QString csv() const override;

 protected:
  void take(const PlotInput& input) override;
  QString message() const override { return message_; }
  QString words() const override;
  void paintPicture(QPainter& painter, const QRectF& inside, const Theme& theme) const override;

 private:
  struct Row {
    QString name;     ///< "Pan: Static safety of the bearings"
    QString numbers;  ///< "1.5 of 12"
    Verdict verdict = Verdict::unknown;
    std::optional<double> margin;
  };
  void paintRow(QPainter& painter, const QRectF& rect, const Theme& theme, const Row& row) const;

  QString message_;
  std::vector<Row> rows_;
};

}  // namespace gazewright
