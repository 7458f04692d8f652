#include <QToolButton>
#include <algorithm>

#include "app/window/desktop_theme.h"
#include "app/window/drawing_panel.h"
#include "app/window/edits.h"
#include "app/window/main_window.h"
#include "app/window/move_player.h"
#include "core/analysis/counterweight.h"

/// The drawing: a handle that is moved changes the fields that it stands for; the simulated move is
/// played by running the plots' cursor.
namespace gazewright {

void MainWindow::connectDrawing() {
  const DrawingCanvas* canvas = drawing_->canvas();
  connect(canvas, &DrawingCanvas::moved, this, &MainWindow::moveHandle);
  connect(canvas, &DrawingCanvas::dragStarted, this, &MainWindow::startDialDrag);
  connect(canvas, &DrawingCanvas::dragEnded, this, &MainWindow::endDrag);
  connect(canvas, &DrawingCanvas::takenBack, this, &MainWindow::takeDialDragBack);
  connect(canvas, &DrawingCanvas::fieldChosen, this, &MainWindow::typeField);
  player_ = new MovePlayer(this);
  connect(player_, &MovePlayer::at, this, &MainWindow::setPlotCursor);
  connect(player_, &MovePlayer::playingChanged, this,
          [this] { drawing_->setPlaying(player_->isPlaying()); });
  const auto play = [this] { playMove(drawing_->playsSlowly()); };
  connect(canvas, &DrawingCanvas::playAsked, this, play);
  connect(drawing_->playButton(), &QToolButton::clicked, this, play);
}

/// As with the dials, a drag always starts from the rig before it, a key from the present one.
void MainWindow::moveHandle(const HandleMove& move) {
  if (!move.continues) dial_drag_id_ = Document::newDragId();
  const Rig& from = dragging_ ? before_drag_ : document_.rig();
  document_.edit(move.what, with_values(from, move.values), dial_drag_id_);
}

void MainWindow::playMove(bool slowly) {
  if (player_->isPlaying()) return player_->stop();
  if (!shown_) return;
  double end_s = 0;
  for (const Axis axis : kAxes) {
    const auto& times = shown_->of(axis).step.time_s;
    if (!times.empty()) end_s = std::max(end_s, times.back());
  }
  player_->start(end_s, slowly ? 10 : 1, desktop_->wantsCalm());
}

/// For tilt; for pan where its load, its balance or a body of its own is selected.
void MainWindow::addCounterweight() {
  const bool for_pan = selected_.startsWith(QStringLiteral("on_pan")) ||
                       selected_ == QStringLiteral("pan.load") ||
                       selected_ == QStringLiteral("pan.balance");
  const Axis axis = for_pan ? Axis::pan : Axis::tilt;
  const std::size_t count = bodies_in(document_.rig(), !for_pan).size();
  document_.edit(tr("add a counterweight"), with_new_counterweight(document_.rig(), axis));
  select(QString::fromStdString(path_of(BodyPlace{!for_pan, count})));
}

}  // namespace gazewright
