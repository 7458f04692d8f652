#pragma once

#include <QWidget>

#include "app/plots/dial_layout.h"
#include "app/plots/kept_picture.h"

namespace gazewright {

/// What a hand did to a mark.
struct DialMove {
  Axis axis = Axis::pan;
  TravelMark mark;         ///< as it was taken hold of
  double angle_rad = 0;    ///< where it is wanted
  bool one_side = false;   ///< a hard stop alone, the other stays
  bool continues = false;  ///< belongs to the same step as the move before
};

/// A travel dial to work with: marks are dragged, or moved by the arrow keys once the dial has the
/// focus (Shift: finer; Page keys: another mark). Enter or a double click asks for the mark's
/// field. It changes nothing itself.
class TravelDial : public QWidget {
  Q_OBJECT
 public:
  explicit TravelDial(Axis axis, QWidget* parent = nullptr);

  Axis axis() const { return picture_.axis; }
  const DialPicture& picture() const { return picture_; }
  void setPicture(const DialPicture& picture);  ///< hand and chosen mark stay
  void setHand(double angle_rad);               ///< NaN: none
  void setTheme(const Theme& theme);
  DialLayout dialLayout() const;
  QString tip(const TravelMark& mark) const;  ///< what a mark's tool tip says

 signals:
  void dragStarted();
  void moved(const gazewright::DialMove& move);
  void takenBack();  ///< Escape: the rig is to be as before the drag
  void dragEnded();
  void fieldChosen(const QString& path);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void leaveEvent(QEvent* event) override;
  bool event(QEvent* event) override;

 private:
  struct Drag {
    TravelMark mark;
    double pointer_rad = 0;  ///< where the pointer was last
    double wanted_rad = 0;   ///< the mark's angle before it is rounded
    double sent_rad = 0;
    bool moved = false;
  };
  void choose(const std::optional<TravelMark>& mark);
  void chooseNext(int by);
  void hover(QPointF point);
  void step(double by_rad);
  void endDrag();
  void describe();
  void paintAgain();
  const TravelMark* activeMark() const;

  DialPicture picture_;
  Theme theme_;
  std::optional<TravelMark> hovered_, chosen_;
  std::optional<Drag> drag_;
  bool key_run_ = false;
  KeptPicture kept_;
};

}  // namespace gazewright
