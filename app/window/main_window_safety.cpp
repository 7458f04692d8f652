#include <QGuiApplication>

#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/places.h"
#include "app/window/question_bar.h"
#include "app/window/safe_work.h"

/// What keeps the work safe, joined to the window.
namespace gazewright {

void MainWindow::buildSafety() {
  questions_ = new QuestionBar(messages_->parentWidget());
  QString folder;
  if (setup_.remember) folder = settings_.stateFolder() + QStringLiteral("/documents");
  safe_ = std::make_unique<SafeWork>(
      document_, *questions_, folder,
      SafeWork::Window{[this] { return mayLeaveRig(); },
                       [this](const QString& file) { return openFile(file); },
                       [this](const QString& file) { return saveTo(file); },
                       [this](const QString& text) { messages_->showNotice(text); },
                       [this](const QString& text) { messages_->showFault(text); },
                       [this](const QString& text) { messages_->withdraw(text); }});
  // The desktop ends the session: whatever becomes of the question about saving, nothing is lost.
  connect(
      qGuiApp, &QGuiApplication::commitDataRequest, this, [this] { safe_->keepNow(); },
      Qt::DirectConnection);
}

void MainWindow::showEvent(QShowEvent* event) {
  QMainWindow::showEvent(event);
  QTimer::singleShot(0, this, [this] { safe_->start(); });  // the window is up first
}

}  // namespace gazewright
