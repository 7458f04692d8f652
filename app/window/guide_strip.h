#pragma once

#include <QFrame>
#include <array>

#include "app/window/guide.h"

class QLabel;
class QToolButton;

namespace gazewright {

/// The first steps as a slim strip of buttons: each says whether it is done and leads to its place.
class GuideStrip : public QFrame {
  Q_OBJECT
 public:
  explicit GuideStrip(QWidget* parent = nullptr);

  void setState(const GuideState& state);
  const GuideState& state() const { return state_; }
  QToolButton* button(GuideStep step) const { return steps_[static_cast<std::size_t>(step)]; }
  QToolButton* closeButton() const { return close_; }

 signals:
  void stepChosen(gazewright::GuideStep step);
  void putAway();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  bool event(QEvent* event) override;

 private:
  void write();
  bool titlesFit() const;

  GuideState state_;
  std::array<QToolButton*, kGuideSteps> steps_;
  QToolButton* close_;
  QLabel* title_;
};

}  // namespace gazewright
