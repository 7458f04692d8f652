#include <QMenuBar>

#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/plot_menu.h"
#include "app/window/plots_panel.h"

/// What the plots have to do with the rest of the window.
namespace gazewright {

void MainWindow::connectPlots() {
  menuBar()->addMenu(plots_->menu());
  plots_->menu()->setAskFile(
      [this](const QString& title, const QString& name, const QString& filter) {
        return askExport(title, QStringLiteral("-") + name, filter);
      });
  connect(plots_, &PlotsPanel::told, this, [this](const QString& text, bool fault) {
    fault ? messages_->showFault(text) : messages_->showNotice(text);
  });
}

}  // namespace gazewright
