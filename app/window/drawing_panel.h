#pragma once

#include <QFrame>

#include "app/plots/drawing.h"
#include "app/plots/kept_picture.h"
#include "app/window/pose.h"

class QToolButton;

namespace gazewright {

class DrawingCanvas;
class TravelDial;

/// The drawing to scale with its choice of view and the two travel dials.
class DrawingPanel : public QFrame {
  Q_OBJECT
 public:
  explicit DrawingPanel(QWidget* parent = nullptr);

  void setRig(const Rig& rig);
  void setPose(const Pose& pose);
  void setSelected(const std::string& part);
  void setTheme(const Theme& theme);
  View view() const;
  void setView(View view);
  DrawingCanvas* canvas() const { return canvas_; }
  QToolButton* placeButton() const { return place_; }  ///< to the card, where they share a place

 signals:
  void partChosen(const QString& part);

 private:
  DrawingCanvas* canvas_;
  std::array<QToolButton*, 3> views_;
  QToolButton* place_;
};

/// Where the drawing is painted, with the dials below it.
class DrawingCanvas : public QWidget {
  Q_OBJECT
 public:
  DrawingCanvas();

  Rig rig;
  Pose pose;
  View view = View::side;
  std::optional<BodyRef> selected;
  Theme theme;

  QRectF drawingRect() const;
  QRectF dialRect(Axis axis) const;
  TravelDial* dial(Axis axis) const { return dials_[static_cast<std::size_t>(axis)]; }
  void paintAgain();  ///< after a change of what is drawn

 signals:
  void bodyPressed(const QString& part);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  std::array<TravelDial*, 2> dials_;
  KeptPicture picture_;
};

}  // namespace gazewright
