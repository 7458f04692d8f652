#include <QActionGroup>
#include <QFileInfo>
#include <QMenuBar>
#include <QMessageBox>
#include <algorithm>

#include "app/window/data_folder.h"
#include "app/window/drive_line.h"
#include "app/window/edits.h"
#include "app/window/findings_view.h"
#include "app/window/list_rows.h"
#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/places.h"
#include "app/window/plots_panel.h"
#include "app/window/ratio_scale.h"
#include "core/data/data_library.h"
#include "gazewright_version.h"

/// The menus, and what each action does.
namespace gazewright {

void MainWindow::buildMenus() {
  QMenu* rig = menuBar()->addMenu(tr("&Rig"));
  actions_.addTo(rig, {"rig.new", "rig.open"});
  QMenu* samples = rig->addMenu(tr("Open a sa&mple"));
  QMenu* recent = rig->addMenu(tr("&Recent"));
  actions_.addTo(rig,
                 {"", "rig.save", "rig.save_as", "", "rig.sheet", "rig.print", "", "rig.quit"});
  actions_.addTo(menuBar()->addMenu(tr("&Edit")),
                 {"edit.undo", "edit.redo", "", "edit.remedy", "edit.body_pan", "edit.body_tilt",
                  "edit.counterweight", "edit.keep_out", "", "edit.pin", "edit.variants", "",
                  "edit.to_shelf", "", "edit.settings"});
  actions_.addTo(menuBar()->addMenu(tr("&Axis")),
                 {"axis.pan_ratio", "axis.tilt_ratio", "axis.swap", "", "axis.fit", "", "axis.next",
                  "axis.previous"});
  connectPlots();
  QMenu* show = menuBar()->addMenu(tr("&Show"));
  actions_.addTo(show, {"show.why", "show.figures", "show.limits", "show.doubts",
                        "show.drive_settings", "show.shelf", "", "show.more", "show.fewer",
                        "show.place", "show.full", "", "show.play", "show.play_slow", ""});
  actions_.addTo(show->addMenu(tr("&Theme")),
                 {"show.desktop", "show.light", "show.dark", "show.contrast"});
  actions_.addTo(show->addMenu(tr("Te&xt size")),
                 {"show.larger", "show.smaller", "show.usual_size"});
  actions_.addTo(show, {"show.reset"});
  actions_.addTo(
      menuBar()->addMenu(tr("&Help")),
      {"help.handbook", "help.tip", "help.guide", "help.shortcuts", "help.data", "", "help.about"});
  connect(samples, &QMenu::aboutToShow, this, [this, samples] { fillSamples(samples); });
  connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecent(recent); });
  auto* themes = new QActionGroup(this);
  for (const char* name : {"desktop", "light", "dark", "contrast"}) {
    const std::string id = std::string("show.") + name;
    themes->addAction(actions_[id.c_str()]);
    actions_.on(id.c_str(), [this, name] { setThemeName(QString::fromUtf8(name)); });
  }
  connectRigActions();
  connectShowActions();
  connectShelf();
  connectSettings();
  connect(&document_.history(), &QUndoStack::indexChanged, this, &MainWindow::updateUndoTexts);
  updateUndoTexts();
}

void MainWindow::connectRigActions() {
  actions_.on("rig.new", [this] {
    if (mayLeaveRig()) newRig();
  });
  actions_.on("rig.open", [this] { askOpen(); });
  actions_.on("rig.save", [this] { save(); });
  actions_.on("rig.save_as", [this] { saveAs(); });
  actions_.on("rig.sheet", [this] { askSheet(); });
  actions_.on("rig.print", [this] { askPrint(); });
  actions_.on("rig.quit", [this] { close(); });
  actions_.on("edit.undo", [this] { document_.history().undo(); });
  actions_.on("edit.redo", [this] { document_.history().redo(); });
  actions_.on("edit.remedy", [this] { findings_->applyRemedyOfSelected(); });
  actions_.on("edit.body_pan", [this] { addBody(false); });
  actions_.on("edit.body_tilt", [this] { addBody(true); });
  actions_.on("edit.counterweight", [this] { addCounterweight(); });
  actions_.on("edit.keep_out", [this] { addKeepOut(); });
  actions_.on("axis.swap", [this] {
    document_.edit(tr("swap of the gearboxes"), with_gearboxes_swapped(document_.rig()));
    messages_->showNotice(
        tr("The gearboxes are exchanged, the gains are still those of before. The cards of both "
           "drives advise them anew."));
  });
}

void MainWindow::connectShowActions() {
  actions_.on("axis.pan_ratio", [this] { driveLine(Axis::pan).ratioScale()->setFocus(); });
  actions_.on("axis.tilt_ratio", [this] { driveLine(Axis::tilt).ratioScale()->setFocus(); });
  actions_.on("axis.next", [this] { stepPart(1); });
  actions_.on("axis.previous", [this] { stepPart(-1); });
  actions_.on("show.place", [this] { togglePlace(); });
  actions_.on("show.limits", [this] { showMoveLimits(); });
  actions_.on("show.play", [this] { playMove(false); });
  actions_.on("show.play_slow", [this] { playMove(true); });
  actions_.on("show.more", [this] { plots_->addPlot(); });
  actions_.on("show.fewer", [this] { plots_->removePlot(); });
  actions_.on("help.data", [this] {
    open_data_folder(QString::fromStdString(own_data_folder().string()), *messages_);
  });
  actions_.on("help.about", [this] { showAbout(); });
}

void MainWindow::updateUndoTexts() {
  const QUndoStack& history = document_.history();
  actions_["edit.undo"]->setEnabled(history.canUndo());
  actions_["edit.redo"]->setEnabled(history.canRedo());
  actions_["edit.undo"]->setText(history.canUndo() ? tr("&Undo %1").arg(history.undoText())
                                                   : tr("&Undo"));
  actions_["edit.redo"]->setText(history.canRedo() ? tr("&Redo %1").arg(history.redoText())
                                                   : tr("&Redo"));
}

void MainWindow::fillRecent(QMenu* menu) {
  menu->clear();
  for (const QString& file : settings_.recentFiles()) {
    QAction* action = menu->addAction(QFileInfo(file).fileName(), this, [this, file] {
      if (mayLeaveRig()) openFile(file);
    });
    action->setToolTip(file);
    if (!QFileInfo::exists(file)) {
      action->setText(tr("%1 (not there any more)").arg(QFileInfo(file).fileName()));
      action->setEnabled(false);
    }
  }
  if (menu->isEmpty()) {
    menu->addAction(tr("No rig opened yet"))->setEnabled(false);
    return;
  }
  menu->addSeparator();
  menu->addAction(tr("Forget these"), this, [this] {
    const QStringList before = settings_.recentFiles();
    settings_.setRecentFiles({});
    messages_->showNotice(tr("The list of recent rigs is empty; the files are where they were."),
                          [this, before] { settings_.setRecentFiles(before); });
  });
}

void MainWindow::fillSamples(QMenu* menu) {
  menu->clear();
  for (const QString& file : sample_files()) {
    menu->addAction(QFileInfo(file).fileName(), this, [this, file] {
      if (mayLeaveRig()) openSample(file);
    });
  }
  if (menu->isEmpty()) menu->addAction(tr("No samples found"))->setEnabled(false);
}

void MainWindow::addBody(bool on_tilt) {
  const std::size_t count = bodies_in(document_.rig(), on_tilt).size();
  document_.edit(tr("add a body"), with_new_body(document_.rig(), on_tilt));
  select(QString::fromStdString(path_of(BodyPlace{on_tilt, count})));
}

void MainWindow::addKeepOut() {
  const CardList& list = card_list("keep_outs");
  const std::size_t count = list.count(document_.rig());
  if (count < list.most) document_.edit(tr("add a keep-out"), list.with_new(document_.rig()));
  select(QString::fromStdString(list_path(list, std::min(count, list.most - 1))));
}

void MainWindow::showAbout() {
  QMessageBox::about(
      this, tr("About Gazewright"),
      tr("<h3>Gazewright %1</h3><p>Design fast two-axis pan-tilt rigs.</p><p>Free software under "
         "the GNU General Public License, version 3 or later, without any warranty.</p><p>Built on "
         "Qt (LGPL), QCustomPlot (GPL), Eigen (MPL), yaml-cpp (MIT) and UDUNITS-2 "
         "(BSD-like).</p><p>Built with Qt %2 for %3, running on Qt %4.</p><p>It sends nothing "
         "anywhere.</p><p>Report a fault to whoever you got the "
         "program from: the maintainer of the package, or the issues beside the source. Say this "
         "version and add the rig file.</p>")
          .arg(QString::fromUtf8(kVersion), QStringLiteral(QT_VERSION_STR), QSysInfo::buildAbi(),
               QString::fromLatin1(qVersion())));
}

}  // namespace gazewright
