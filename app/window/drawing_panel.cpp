#include "app/window/drawing_panel.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

#include "app/plots/dial_view.h"
#include "app/window/edits.h"
#include "app/window/widgets.h"

namespace gazewright {
namespace {
constexpr View kViews[] = {View::side, View::front, View::top};

/// Whether two rigs give the same drawing.
bool look_alike(const Rig& a, const Rig& b) {
  const auto same = [&](Axis axis) {
    return a.axis(axis).stops == b.axis(axis).stops && a.axis(axis).cable == b.axis(axis).cable;
  };
  return a.on_pan == b.on_pan && a.on_tilt == b.on_tilt && a.tilt_axis_at_m == b.tilt_axis_at_m &&
         a.stand == b.stand && a.camera == b.camera && same(Axis::pan) && same(Axis::tilt);
}

}  // namespace

DrawingPanel::DrawingPanel(QWidget* parent) : QFrame(parent) {
  setKind(this, "card");
  canvas_ = new DrawingCanvas;
  auto* top = new QHBoxLayout;
  top->setSpacing(3);
  top->addWidget(heading(tr("Drawing")));
  play_ = textButton(QStringLiteral("▶"), tr("Play the simulated move (Space in the drawing)"));
  play_->setAccessibleName(tr("Play the move"));
  play_->setObjectName(QStringLiteral("play"));
  slow_ = textButton(tr("÷10"), tr("Play ten times slower than it is"));
  slow_->setAccessibleName(tr("Ten times slower"));
  slow_->setCheckable(true);
  top->addWidget(play_);
  top->addWidget(slow_);
  top->addStretch();
  all_ = textButton(tr("all"), tr("All three views to one scale; needs a larger panel"));
  all_->setCheckable(true);
  top->addWidget(all_);
  connect(all_, &QToolButton::clicked, this, &DrawingPanel::setAllViews);
  auto* group = new QButtonGroup(this);
  group->addButton(all_);
  for (std::size_t i = 0; i < 3; ++i) {
    views_[i] = textButton(view_word(kViews[i]), tr("Look at the rig from this side"));
    views_[i]->setCheckable(true);
    group->addButton(views_[i]);
    top->addWidget(views_[i]);
    connect(views_[i], &QToolButton::clicked, this, [this, i] { setView(kViews[i]); });
  }
  place_ = textButton(tr("Card"), tr("Show the card in place of the drawing"));
  place_->hide();
  top->addWidget(place_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 8, 6);
  layout->addLayout(top);
  layout->addWidget(canvas_, 1);
  connect(canvas_, &DrawingCanvas::bodyPressed, this, &DrawingPanel::partChosen);
  connect(canvas_, &DrawingCanvas::viewsChanged, this, &DrawingPanel::showChoice);
  showChoice();
}

void DrawingPanel::setRig(const Rig& rig) {
  if (look_alike(canvas_->rig, rig)) return;
  canvas_->rig = rig;
  canvas_->paintAgain();
}

void DrawingPanel::setPose(const Pose& pose) {
  canvas_->pose = pose;
  for (Axis axis : kAxes) canvas_->dial(axis)->setHand(pose.of(axis));
  canvas_->paintAgain();
}

void DrawingPanel::setSelected(const std::string& part) {
  const auto place = body_place(canvas_->rig, part);
  const auto selected = place ? std::optional(BodyRef{place->on_tilt, place->index}) : std::nullopt;
  if (canvas_->selected == selected) return;
  canvas_->selected = selected;
  canvas_->paintAgain();
}

void DrawingPanel::setTheme(const Theme& theme) {
  canvas_->theme = theme;
  for (Axis axis : kAxes) canvas_->dial(axis)->setTheme(theme);
  canvas_->paintAgain();
}

View DrawingPanel::view() const { return canvas_->view; }

void DrawingPanel::setView(View view) {
  canvas_->view = view;
  canvas_->wants_all = false;
  showChoice();
}

void DrawingPanel::setAllViews() {
  canvas_->wants_all = true;
  showChoice();
}

void DrawingPanel::showChoice() {
  const bool room = canvas_->hasRoomForAll(), all = room && canvas_->wants_all;
  all_->setEnabled(room);
  (all ? all_ : views_[static_cast<std::size_t>(canvas_->view)])->setChecked(true);
  canvas_->paintAgain();
}

bool DrawingPanel::playsSlowly() const { return slow_->isChecked(); }

void DrawingPanel::setPlaying(bool playing) {
  play_->setText(playing ? QStringLiteral("■") : QStringLiteral("▶"));
  play_->setAccessibleName(playing ? tr("Stop the move") : tr("Play the move"));
}

}  // namespace gazewright
