#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

namespace gazewright {

/// Runs a time from zero to an end at the clock's pace or slower, once, when it is asked to:
/// nothing plays by itself. For people who asked their desktop for less motion it goes in a few
/// still pictures.
class MovePlayer : public QObject {
  Q_OBJECT
 public:
  explicit MovePlayer(QObject* parent = nullptr);

  /// @param slower  1: real time, 10: a tenth of its speed. @param still  in still pictures
  void start(double end_s, double slower, bool still);
  void stop();  ///< where it is
  bool isPlaying() const { return timer_.isActive(); }

 signals:
  void at(double time_s);
  void playingChanged();

 private:
  void tick();

  QTimer timer_;
  QElapsedTimer clock_;
  double end_s_ = 0, slower_ = 1;
  int still_ = 0;  ///< pictures shown so far; 0: in motion
};

}  // namespace gazewright
