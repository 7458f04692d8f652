#include "app/window/drawing_panel.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QMouseEvent>
#include <QToolButton>
#include <algorithm>

#include "app/plots/dial_view.h"
#include "app/window/edits.h"
#include "app/window/widgets.h"

namespace gazewright {
namespace {
constexpr View kViews[] = {View::side, View::front, View::top};

/// Whether two rigs give the same drawing.
bool look_alike(const Rig& a, const Rig& b) {
  return a.on_pan == b.on_pan && a.on_tilt == b.on_tilt && a.tilt_axis_at_m == b.tilt_axis_at_m &&
         a.stand == b.stand && a.camera == b.camera;
}

}  // namespace

DrawingPanel::DrawingPanel(QWidget* parent) : QFrame(parent) {
  setKind(this, "card");
  canvas_ = new DrawingCanvas;
  auto* top = new QHBoxLayout;
  top->setSpacing(3);
  top->addWidget(heading(tr("Drawing")));
  top->addStretch();
  auto* group = new QButtonGroup(this);
  for (std::size_t i = 0; i < 3; ++i) {
    views_[i] = textButton(view_word(kViews[i]), tr("Look at the rig from this side"));
    views_[i]->setCheckable(true);
    group->addButton(views_[i]);
    top->addWidget(views_[i]);
    connect(views_[i], &QToolButton::clicked, this, [this, i] { setView(kViews[i]); });
  }
  views_[0]->setChecked(true);
  place_ = textButton(tr("Card"), tr("Show the card in place of the drawing"));
  place_->hide();
  top->addWidget(place_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 8, 6);
  layout->addLayout(top);
  layout->addWidget(canvas_, 1);
  connect(canvas_, &DrawingCanvas::bodyPressed, this, &DrawingPanel::partChosen);
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
  for (std::size_t i = 0; i < 3; ++i) views_[i]->setChecked(kViews[i] == view);
  canvas_->paintAgain();
}

DrawingCanvas::DrawingCanvas()
    : theme(theme_for(ThemeKind::light)),
      dials_{new TravelDial(Axis::pan, this), new TravelDial(Axis::tilt, this)} {
  for (TravelDial* dial : dials_) dial->setHand(0);
  setMinimumSize(220, 160);
  setAccessibleName(tr("Drawing of the rig to scale"));
}

QRectF DrawingCanvas::dialRect(Axis axis) const {
  const double tall = std::clamp(height() * 0.32, 90.0, 180.0), wide = width() / 2.0;
  return {axis == Axis::pan ? 0.0 : wide, height() - tall, wide, tall};
}

QRectF DrawingCanvas::drawingRect() const {
  return QRectF(0, 0, width(), height() - dialRect(Axis::pan).height() - 4);
}

void DrawingCanvas::paintEvent(QPaintEvent*) {
  QPainter(this).drawPixmap(0, 0, picture_.of(*this, theme.card, [this](QPainter& painter) {
    paint_drawing(painter, drawingRect(), rig, view, pose.pan_rad, pose.tilt_rad, theme, selected);
  }));
}

void DrawingCanvas::paintAgain() {
  picture_.forget();
  update();
}

void DrawingCanvas::resizeEvent(QResizeEvent*) {
  for (Axis axis : kAxes) dial(axis)->setGeometry(dialRect(axis).toRect());
}

void DrawingCanvas::mousePressEvent(QMouseEvent* event) {
  const auto body =
      body_at(event->position(), drawingRect(), rig, view, pose.pan_rad, pose.tilt_rad);
  if (body) emit bodyPressed(body->path());
}

}  // namespace gazewright
