#pragma once

#include <qcustomplot.h>

#include <optional>

#include "app/plots/chart.h"
#include "app/plots/chart_readout.h"
#include "app/plots/line_labels.h"

/// What ChartCanvas draws besides lines: tinted bands under the data, labelled marks, legend and
/// notes over it, and the cursor in a layer of its own.
namespace gazewright {

/// In place of an entry of the legend: where none is, and where "+3" stands for those without room.
inline constexpr int kNoEntry = -1, kMoreEntries = -2;

struct ChartStyle {
  Theme theme = theme_for(ThemeKind::light);
  QFont font;           ///< with a size in pixels
  int legend_rows = 0;  ///< lines that the whole legend has; 0: one, what has no room is counted
};

QPen line_pen(const ChartStyle& style, std::optional<Axis> axis, Line line);
/// Lets what is under it through.
QColor tint(const ChartStyle& style, std::optional<Axis> axis, float opacity = 0.15F);
/// Of a ribbon; without an axis for its entry in the legend.
QColor ribbon_colour(const ChartStyle& style, std::optional<Axis> axis);

class ChartItem : public QCPAbstractItem {
 public:
  ChartItem(QCustomPlot* plot, const Chart& chart, const ChartStyle& style);
  double selectTest(const QPointF&, bool, QVariant*) const override { return -1; }

 protected:
  QRectF area() const;  ///< the axis rectangle
  QPointF pixel(double x, double y) const;
  QColor colour(std::optional<Axis> axis) const;
  QColor textColour(std::optional<Axis> axis) const;

  const Chart& chart_;
  const ChartStyle& style_;
};

class BandsItem : public ChartItem {
 public:
  using ChartItem::ChartItem;

 protected:
  void draw(QCPPainter* painter) override;
};

/// Ribbons, under the data too.
class RibbonsItem : public ChartItem {
 public:
  using ChartItem::ChartItem;

 protected:
  void draw(QCPPainter* painter) override;

 private:
  bool inView(const Ribbon& ribbon, qsizetype at) const;
};

/// Which hatching means what: one stretch for each text, in the order of the strips.
QVector<Stretch> hatching_key(const Chart& chart);

/// The strips of stretches at the bottom of the plot, and the key to their hatchings in the line of
/// the x title.
class StretchesItem : public ChartItem {
 public:
  using ChartItem::ChartItem;
  static double height(const Chart& chart, const QFont& font);

 protected:
  void draw(QCPPainter* painter) override;

 private:
  /// @returns whether its text found room
  bool drawStretch(QCPPainter* painter, const Stretch& stretch, QRectF box) const;
  void drawKey(QCPPainter* painter, const QStringList& written) const;
};

/// Marks, names of lines, notes, and the header with what of the legend the names do not say.
class MarksItem : public ChartItem {
 public:
  using ChartItem::ChartItem;

  /// The legend's entry at a place as last drawn: in the header, or the name of one of its lines;
  /// −1: none.
  int entryAt(QPointF at) const;
  const QVector<LineLabel>& lineLabels() const { return line_labels_; }  ///< as last drawn
  int legendRows() const { return legend_rows_; }  ///< that the whole legend took or would take

 protected:
  void draw(QCPPainter* painter) override;

 private:
  void drawHeader(QCPPainter* painter);
  void drawLineLabels(QCPPainter* painter);
  void drawEntry(QCPPainter* painter, const LegendEntry& entry, const QRectF& box) const;
  void drawMark(QCPPainter* painter, const Mark& mark);
  void drawUpright(QCPPainter* painter, const Mark& mark);
  void drawLimit(QCPPainter* painter, const Mark& mark) const;
  void drawBracket(QCPPainter* painter, const Mark& mark) const;
  void labelMark(QCPPainter* painter, const Mark& mark);
  void drawBandLabels(QCPPainter* painter);
  void drawTicks(QCPPainter* painter) const;
  void drawNotes(QCPPainter* painter);
  void drawMessage(QCPPainter* painter) const;
  /// At `at` by its `side`, or beside the upright line at `at` where there is no side.
  void drawLabel(QCPPainter* painter, QPointF at, Qt::Alignment side, const QString& text,
                 const QColor& colour);
  bool isSeen(const Mark& mark) const;
  QPointF bracketEnd(const Mark& mark) const;

  struct EntryBox {
    int entry;
    QRectF box;
    qsizetype left_out = 0;  ///< of kMoreEntries
  };
  QVector<EntryBox> legendBoxes(double right) const;
  QVector<EntryBox> wrappedBoxes(double right);
  QVector<int> unsaidEntries() const;
  double legendRoom(double right) const;
  void drawText(QCPPainter* painter, const QRectF& box, const QString& text,
                const QColor& text_colour) const;

  std::optional<LabelPlaces> places_;  ///< of this drawing
  QVector<LineLabel> line_labels_;
  QVector<EntryBox> entry_boxes_;
  int legend_rows_ = 1;
};

class CursorItem : public ChartItem {
 public:
  using ChartItem::ChartItem;

  CursorPlace a, b;

 protected:
  void draw(QCPPainter* painter) override;

 private:
  void drawLine(QCPPainter* painter, double x, const QString& letter) const;
  void drawDots(QCPPainter* painter, const SeriesReading& reading) const;
  void drawReadout(QCPPainter* painter, double at_px, double other_px, QStringList lines) const;
};

}  // namespace gazewright
