#pragma once

#include <qcustomplot.h>

/// Lines that leave out points nobody could see: thick lines with thousands of points take tens of
/// milliseconds to stroke.
namespace gazewright {

/// The polyline with points left out that lie within `tolerance` of the line that remains. Ends,
/// peaks, turns and gaps (NaN) stay. Source: cone intersection, Sklansky and Gonzalez, Pattern
/// Recognition 12, 1980; from memory.
QVector<QPointF> thinned(const QVector<QPointF>& points, double tolerance);

class ThinGraph : public QCPGraph {
 public:
  using QCPGraph::QCPGraph;

 protected:
  void drawLinePlot(QCPPainter* painter, const QVector<QPointF>& lines) const override;
};

class ThinCurve : public QCPCurve {
 public:
  using QCPCurve::QCPCurve;

 protected:
  void drawCurveLine(QCPPainter* painter, const QVector<QPointF>& lines) const override;
};

}  // namespace gazewright
