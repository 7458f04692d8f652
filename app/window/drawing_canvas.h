#pragma once

#include <QWidget>
#include <array>

#include "app/plots/drawing_handles.h"
#include "app/plots/kept_picture.h"
#include "app/window/pose.h"

namespace gazewright {

class TravelDial;

/// What a hand did to a handle of the drawing.
struct HandleMove {
  DrawingHandle handle;
  QString what;                    ///< its name, for the Edit menu
  std::vector<FieldValue> values;  ///< of the fields that it changes
  bool continues = false;          ///< belongs to the same step as the move before
};

/// Where the drawing is painted, with the dials below it. Its handles are dragged, or moved by the
/// keys once the drawing has the focus: Tab goes from handle to handle, arrows move one by 1 mm
/// (Shift: 0.1 mm, Page keys: 10 mm), Escape takes a drag back or lets the handle go. It changes
/// nothing itself.
class DrawingCanvas : public QWidget {
  Q_OBJECT
 public:
  DrawingCanvas();

  Rig rig;
  Pose pose;
  View view = View::side;  ///< the chosen one, and the one whose handles the keys go through
  bool wants_all = true;   ///< all three views where there is room
  std::optional<BodyRef> selected;
  Theme theme;

  QRectF drawingRect() const;
  QRectF dialRect(Axis axis) const;
  TravelDial* dial(Axis axis) const { return dials_[static_cast<std::size_t>(axis)]; }
  bool hasRoomForAll() const;
  /// The views as they are drawn. While a handle is dragged their scale and place stay.
  const std::vector<DrawnView>& drawnViews();
  std::vector<DrawingHandle> handles();  ///< of all these views
  const std::optional<DrawingHandle>& chosen() const { return chosen_; }
  void choose(const std::optional<DrawingHandle>& handle);
  bool isDragging() const { return drag_ && drag_->moved; }
  /// What is said beside the pointer, a line each: the value, and of a counterweight its effect.
  QStringList readout();
  void paintAgain();  ///< after a change of what is drawn

 signals:
  void bodyPressed(const QString& part);
  void dragStarted();
  void moved(const gazewright::HandleMove& move);
  void takenBack();  ///< Escape: the rig is to be as before the drag
  void dragEnded();
  void fieldChosen(const QString& path);
  void playAsked();
  void viewsChanged();  ///< between one view and all three

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  bool focusNextPrevChild(bool next) override;
  bool event(QEvent* event) override;

 private:
  struct Drag {
    DrawingHandle handle;
    DrawnView drawn;               ///< as it was when the drag began
    std::vector<DrawnView> frame;  ///< all of them then
    Rig before;
    QPointF pressed, last;
    std::vector<FieldValue> sent;
    bool moved = false;
  };
  const DrawnView* drawnOf(const DrawingHandle& handle);
  const DrawnView* drawnAt(QPointF point);
  std::vector<DrawingHandle> handlesOf(View of);
  std::optional<DrawingHandle> handleAt(QPointF point);
  std::optional<DrawingHandle> fresh(const DrawingHandle& like);  ///< where it is now
  void dragTo(QPointF point, bool free);
  void endDrag();
  void hover(QPointF point);
  void step(QPointF right_up, double by_m);
  bool stepKey(const QKeyEvent& event);
  void describe();
  void paintHandles(QPainter& painter);
  void paintReadout(QPainter& painter, QPointF beside);
  QString tip(const DrawingHandle& handle);

  std::array<TravelDial*, 2> dials_;
  KeptPicture picture_;
  std::vector<DrawnView> drawn_;
  std::optional<DrawingHandle> chosen_, hovered_;
  std::optional<Drag> drag_;
  bool key_run_ = false, pointer_inside_ = false, drew_all_ = false;
};

}  // namespace gazewright
