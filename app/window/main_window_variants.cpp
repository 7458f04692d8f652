#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/variants_desk.h"
#include "app/window/variants_dialog.h"

/// Variants: what the actions do, and the way to the plots and the sheet.
namespace gazewright {

void MainWindow::connectVariants() {
  variants_ = new VariantsDesk(document_, this);
  connect(variants_, &VariantsDesk::curvesChanged, this, &MainWindow::feedPlots);
  connect(variants_, &VariantsDesk::analysed, this, [this] {
    if (recompute_.isSettled()) writeWaitingSheet();
  });
  connect(variants_, &VariantsDesk::told, this,
          [this](const QString& notice) { messages_->showNotice(notice); });
  connect(&document_, &Document::rigChanged, variants_, &VariantsDesk::rigChanged);
  actions_.on("edit.pin", [this] { variants_->pin(); });
  actions_.on("edit.variants", [this] { variants_->openDialog(); });
  connect(variants_, &VariantsDesk::dialogMade, this, [this](VariantsDialog* dialog) {
    for (const char* id : {"edit.undo", "edit.redo", "edit.pin", "rig.save"})
      dialog->addAction(actions_[id]);
  });
}

}  // namespace gazewright
