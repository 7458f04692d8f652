#pragma once

#include <QDialog>
#include <QString>
#include <vector>

namespace gazewright {

class Actions;

/// One line of the shortcuts' window.
struct Shortcut {
  QString place;  ///< where it works: "Window", "Findings", "Ratio scale"
  QString keys;   ///< "Ctrl+S", as this desktop writes them
  QString what;
};
/// Those of the actions, then those of widgets that have the focus. No place has two of a kind.
std::vector<Shortcut> all_shortcuts(const Actions& actions);

class ShortcutsWindow : public QDialog {
  Q_OBJECT
 public:
  explicit ShortcutsWindow(const Actions& actions, QWidget* parent = nullptr);
};

}  // namespace gazewright
