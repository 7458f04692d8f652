#include <QMenuBar>
#include <QShortcut>
#include <QTableView>
#include <QToolButton>
#include <QToolTip>
#include <algorithm>

#include "app/plots/outline.h"
#include "app/window/card.h"
#include "app/window/drawing_panel.h"
#include "app/window/drive_line.h"
#include "app/window/empty_note.h"
#include "app/window/explainer.h"
#include "app/window/findings_view.h"
#include "app/window/guide_strip.h"
#include "app/window/main_window.h"
#include "app/window/missing_bar.h"
#include "app/window/ratio_scale.h"
#include "app/window/shortcuts.h"

/// Why, help, shortcuts and the first steps.
namespace gazewright {

void MainWindow::connectHelp() {
  explainer_ = new Explainer(*this);
  actions_.on("show.why", [this] { explainer_->why(focusWidget()); });
  actions_.on("show.figures", [this] { explainer_->showFigures(); });
  actions_.on("show.full", [this] {
    setWindowState(windowState() ^ Qt::WindowFullScreen);
    actions_["show.full"]->setChecked(isFullScreen());
  });
  actions_.on("help.handbook", [this] { explainer_->help(focusWidget()); });
  actions_.on("help.tip", [this] { showTip(); });
  actions_.on("help.shortcuts", [this] {
    auto* shortcuts = new ShortcutsWindow(actions_, this);
    shortcuts->setAttribute(Qt::WA_DeleteOnClose);
    shortcuts->show();
  });
  actions_.on("help.guide", [this] {
    const bool wanted = actions_["help.guide"]->isChecked();
    guide_->setVisible(wanted);
    if (setup_.remember) settings_.setWantsGuide(wanted);
    updateGuide();
  });
  DrawingCanvas* canvas = drawing_->canvas();
  no_bodies_ = new EmptyNote(
      canvas, tr("Nothing to draw yet"), tr("Add the ball, the camera and what carries them."),
      tr("Add a body that tilts"), [canvas] { return canvas->drawingRect().toRect(); });
  connect(no_bodies_->button(), &QToolButton::clicked, actions_["edit.body_tilt"],
          &QAction::trigger);
  connect(missing_, &MissingBar::fieldChosen, this, &MainWindow::typeField);
  connect(guide_, &GuideStrip::putAway, actions_["help.guide"], &QAction::trigger);
  connect(guide_, &GuideStrip::stepChosen, this, &MainWindow::goToStep);
  actions_["rig.quit"]->setShortcuts(
      {actions_["rig.quit"]->shortcut(), QKeySequence(Qt::CTRL | Qt::Key_W)});
  auto* menus = new QShortcut(QKeySequence(Qt::Key_F10), this);
  menus->setObjectName(QStringLiteral("menus"));
  connect(menus, &QShortcut::activated, this, [this] {
    menuBar()->setFocus();
    menuBar()->setActiveAction(menuBar()->actions().front());
  });
  for (const Axis axis : kAxes) {
    connect(driveLine(axis).ratioScale(), &RatioScale::typed, this,
            [this, axis](const QString& text) {
              typeField(QString::fromUtf8(name_of(axis)) + QStringLiteral(".gearbox.ratio"));
              card_->typeInto(text);
            });
  }
}

/// What the pointer would bring up, for whoever works by keyboard.
void MainWindow::showTip() {
  QWidget* focus = focusWidget();
  if (!focus) return;
  QRect place = focus->rect();
  QString tip;
  if (const auto* list = qobject_cast<QAbstractItemView*>(focus)) {
    tip = list->currentIndex().data(Qt::ToolTipRole).toString();
    place = list->visualRect(list->currentIndex());
  }
  for (const QWidget* at = focus; at && tip.isEmpty(); at = at->parentWidget()) tip = at->toolTip();
  if (tip.isEmpty()) return explainer_->help(focus);
  QToolTip::showText(focus->mapToGlobal(place.bottomLeft()), tip, focus);
}

void MainWindow::updateGuide() {
  actions_["help.guide"]->setChecked(!guide_->isHidden());
  if (guide_->isHidden() || !shown_) return;
  guide_->setState(
      guide_state(document_.rig(), sample_ ? &*sample_ : nullptr, *shown_, sheet_made_));
}

void MainWindow::updateEmptyViews() {
  const Rig& rig = document_.rig();
  const auto shapeless = [](const Body& body) { return outline_points_m(body).empty(); };
  no_bodies_->setVisible(std::ranges::all_of(rig.on_pan, shapeless) &&
                         std::ranges::all_of(rig.on_tilt, shapeless));
  missing_->setAnalysis(rig, *shown_);
}

void MainWindow::goToStep(GuideStep step) {
  switch (step) {
    case GuideStep::task:
      return typeField(QStringLiteral("task.pan_move"));
    case GuideStep::masses:
      if (document_.rig().on_tilt.empty()) return select(QStringLiteral("tilt.load"));
      return typeField(QStringLiteral("on_tilt[0].mass"));
    case GuideStep::parts:
      return typeField(QStringLiteral("pan.motor.speed_constant"));
    case GuideStep::ratios:
      select(QStringLiteral("pan.gearbox"));
      return driveLine(Axis::pan).ratioScale()->setFocus(Qt::OtherFocusReason);
    case GuideStep::findings:
      findings_->table()->setFocus(Qt::OtherFocusReason);
      return findings_->selectFirst();
    case GuideStep::sheet:
      return actions_["rig.sheet"]->trigger();
  }
}

}  // namespace gazewright
