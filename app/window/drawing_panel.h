#pragma once

#include <QFrame>

#include "app/window/drawing_canvas.h"

class QToolButton;

namespace gazewright {

/// The drawing to scale with its choice of views, the two travel dials and the player of the move.
class DrawingPanel : public QFrame {
  Q_OBJECT
 public:
  explicit DrawingPanel(QWidget* parent = nullptr);

  void setRig(const Rig& rig);
  void setPose(const Pose& pose);
  void setSelected(const std::string& part);
  void setTheme(const Theme& theme);
  View view() const;
  void setView(View view);  ///< this one alone
  void setAllViews();       ///< all three, where there is room
  DrawingCanvas* canvas() const { return canvas_; }
  QToolButton* placeButton() const { return place_; }  ///< to the card, where they share a place
  QToolButton* playButton() const { return play_; }
  bool playsSlowly() const;
  void setPlaying(bool playing);

 signals:
  void partChosen(const QString& part);

 private:
  void showChoice();

  DrawingCanvas* canvas_;
  std::array<QToolButton*, 3> views_;
  QToolButton *all_, *play_, *slow_, *place_;
};

}  // namespace gazewright
