#include "app/window/move_player.h"

#include <algorithm>

namespace gazewright {
namespace {
constexpr int kFrame_ms = 16, kStill_ms = 500, kStills = 6;
}

MovePlayer::MovePlayer(QObject* parent) : QObject(parent) {
  timer_.setTimerType(Qt::PreciseTimer);
  connect(&timer_, &QTimer::timeout, this, &MovePlayer::tick);
}

void MovePlayer::start(double end_s, double slower, bool still) {
  if (!(end_s > 0) || !(slower > 0)) return;
  end_s_ = end_s;
  slower_ = slower;
  still_ = still ? 1 : 0;
  clock_.start();
  timer_.start(still ? kStill_ms : kFrame_ms);
  emit playingChanged();
  emit at(0);
}

void MovePlayer::stop() {
  if (!isPlaying()) return;
  timer_.stop();
  emit playingChanged();
}

void MovePlayer::tick() {
  double time_s = double(clock_.nsecsElapsed()) * 1e-9 / slower_;
  if (still_ > 0) time_s = end_s_ * still_++ / (kStills - 1);
  time_s = std::min(time_s, end_s_);
  if (time_s >= end_s_) stop();
  emit at(time_s);
}

}  // namespace gazewright
