#pragma once

#include <QWidget>
#include <optional>
#include <utility>
#include <vector>

#include "app/plots/theme.h"

namespace gazewright {

/// The ratio of a gearbox on a logarithmic scale from 1 to 200: the band within 5 % of the quickest
/// move, ticks for ratios that are sold, and which end runs out of what. The handle is dragged, or
/// moved by arrow keys (Page keys: coarse; Home and End: the best ratio); the wheel works only with
/// the focus.
class RatioScale : public QWidget {
  Q_OBJECT
 public:
  static constexpr double kLeast = 1, kMost = 200;

  RatioScale(Axis axis, QWidget* parent = nullptr);

  void setRatio(std::optional<double> ratio);
  std::optional<double> ratio() const { return ratio_; }
  void setBand(double least, double most, std::optional<double> best);  ///< 0, 0: none known
  /// What runs out below the band and above it: "drive current", "voltage"; empty: not known.
  void setEnds(const QString& below, const QString& above);
  QString below() const { return below_; }
  QString above() const { return above_; }
  /// The ticks: ratios of the gearboxes on the shelf; none: those that are usual, as at first.
  void setStock(std::vector<double> ratios);
  const std::vector<double>& stock() const { return stock_; }
  void setTheme(const Theme& theme);

  QPointF handlePoint() const;  ///< where the handle is, for dragging it
  double xOf(double ratio) const;
  double ratioAt(double x) const;
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }

 signals:
  /// Every move of the handle; moves of one drag share an id.
  void ratioMoved(double ratio, int dragId);
  void dragStarted();
  void dragEnded();
  void typed(const QString& text);  ///< the first digit of a ratio, for its field

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;

 private:
  void moveTo(double ratio, int dragId);
  void describe();
  void step(double factor);
  double lineY() const;
  void paintScale(QPainter& painter) const;
  std::pair<QString, QString> endWords(const QFontMetrics& metrics, int room) const;
  void paintHandle(QPainter& painter) const;

  Axis axis_;
  Theme theme_;
  std::optional<double> ratio_, best_;
  double band_least_ = 0, band_most_ = 0;
  QString below_, above_;
  std::vector<double> stock_;
  bool has_shelf_ = false;
  int drag_id_ = -1, key_id_ = -1;
};

/// Three significant digits; whole numbers snap within 1.5 %, since most gearboxes have them.
double tidy_ratio(double ratio);

}  // namespace gazewright
