#include <QApplication>
#include <QDesktopServices>
#include <QDir>
#include <QScreen>
#include <QShortcut>
#include <QSplitter>
#include <QUrl>
#include <algorithm>

#include "app/window/card.h"
#include "app/window/data_folder.h"
#include "app/window/explainer.h"
#include "app/window/help_places.h"
#include "app/window/look.h"
#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/plots_panel.h"
#include "app/window/settings_window.h"
#include "core/data/data_library.h"
#include "core/shelf/shelf.h"

/// The settings, what each of them does, and the layout.
namespace gazewright {

void MainWindow::connectSettings() {
  actions_.on("edit.settings", [this] { showSettings(); });
  actions_.on("show.larger", [this] { stepText(1); });
  actions_.on("show.smaller", [this] { stepText(-1); });
  actions_.on("show.usual_size", [this] { setTextPercent(100); });
  actions_.on("show.reset", [this] { resetLayout(); });
  actions_["show.larger"]->setShortcuts(
      {actions_["show.larger"]->shortcut(), QKeySequence(Qt::CTRL | Qt::Key_Equal)});
}

void MainWindow::setPreferences(const Preferences& preferences) {
  const bool resized = preferences.text_percent != preferences_.text_percent;
  preferences_ = preferences;
  if (setup_.remember) settings_.setPreferences(preferences);
  if (resized) applyTextSize();
  applyTheme();
  if (settings_window_) settings_window_->setPreferences(preferences);
}

void MainWindow::setThemeName(const QString& name) {
  Preferences changed = preferences_;
  changed.theme = name;
  setPreferences(changed);
}

void MainWindow::setTextPercent(int percent) {
  Preferences changed = preferences_;
  changed.text_percent = nearest_text_size(percent);
  setPreferences(changed);
}

void MainWindow::stepText(int by) {
  const auto at = std::ranges::find(kTextSizes, preferences_.text_percent) - kTextSizes.begin();
  const auto last = static_cast<std::ptrdiff_t>(kTextSizes.size()) - 1;
  setTextPercent(
      kTextSizes[static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(at + by, 0, last))]);
}

/// Whoever measures letters hears of their new size; the card keeps the least width of its fields.
void MainWindow::applyTextSize() {
  const bool narrowest = card_->width() <= card_->minimumWidth() + 2;
  set_text_size(preferences_.text_percent);
  card_->setMinimumWidth(cardWidth());
  middle_->setMinimumHeight(QFontMetrics(QApplication::font()).lineSpacing() * 22);
  if (!narrowest) return;
  QList<int> sizes = middle_->sizes();
  sizes.back() += sizes.front() - cardWidth();
  sizes.front() = cardWidth();
  middle_->setSizes(sizes);
}

void MainWindow::showSettings() {
  if (!settings_window_) {
    const QString parts_at = QString::fromStdString(usual_shelf_folder().string());
    const QString data_at = QString::fromStdString(own_data_folder().string());
    settings_window_ = new SettingsWindow(
        {{tr("Parts shelf"), parts_at, tr("A file for each of your parts"),
          [this, parts_at] { open_shelf_folder(parts_at, settings_window_->messages()); }},
         {tr("Data files"), data_at, tr("Your own materials, screws, wires and rules"),
          [this, data_at] { open_data_folder(data_at, settings_window_->messages()); }}},
        this);
    connect(settings_window_, &SettingsWindow::changed, this, &MainWindow::setPreferences);
    connect(settings_window_, &SettingsWindow::defaultsAsked, this, &MainWindow::restoreDefaults);
    connect(settings_window_, &SettingsWindow::layoutResetAsked, this, &MainWindow::resetLayout);
    for (const char* id : {"show.larger", "show.smaller", "show.usual_size"})
      settings_window_->addAction(actions_[id]);
    settings_window_->messages().setTheme(theme_);
    auto* help = new QShortcut(QKeySequence::HelpContents, settings_window_);
    connect(help, &QShortcut::activated, this,
            [this] { explainer_->openHandbook(help_for_window(QStringLiteral("Settings"))); });
  }
  settings_window_->setPreferences(preferences_);
  settings_window_->show();
  settings_window_->raise();
  settings_window_->activateWindow();
}

void MainWindow::restoreDefaults() {
  const Preferences before = preferences_;
  setPreferences({});
  noticePlace().showNotice(tr("Every setting is as at first."),
                           [this, before] { setPreferences(before); });
}

void MainWindow::resetLayout() {
  const Layout before{saveGeometry(), middle_->saveState(), whole_->saveState(), plots_->kinds()};
  settings_.forgetLayout();
  plots_->setKinds(PlotsPanel::usualKinds());
  restoreLayout();
  resize(size().boundedTo(screen()->availableSize()));
  noticePlace().showNotice(tr("Sizes and plots are as at first."), [this, before] {
    restoreGeometry(before.window);
    middle_->restoreState(before.middle);
    whole_->restoreState(before.whole);
    plots_->setKinds(before.plots);
  });
}

MessageBar& MainWindow::noticePlace() {
  return settings_window_ && settings_window_->isVisible() ? settings_window_->messages()
                                                           : *messages_;
}

}  // namespace gazewright
