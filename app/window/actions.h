#pragma once

#include <QAction>
#include <QKeySequence>
#include <QString>
#include <functional>
#include <initializer_list>
#include <map>
#include <span>
#include <string>

class QMenu;
class QMenuBar;
class QWidget;

namespace gazewright {

/// Every command of the window, declared once. `id` begins with its menu.
struct ActionInfo {
  const char* id;    ///< "rig.save"
  const char* text;  ///< "&Save", translated in the context Actions
  const char* help;  ///< one sentence
  const char* icon;  ///< name in the icon theme, or empty
  QKeySequence::StandardKey standard = QKeySequence::UnknownKey;
  const char* shortcut = "";  ///< where there is no standard key
  bool checkable = false;
};
std::span<const ActionInfo> action_table();

/// The actions of one window and what they do.
class Actions {
 public:
  explicit Actions(QWidget* window);
  /// What an action does. @pre the id is in the table (asserted).
  void on(const char* id, std::function<void()> run);
  QAction* operator[](const char* id) const;
  /// Adds one to a menu; "" adds a separator.
  void addTo(QMenu* menu, std::initializer_list<const char*> ids) const;

 private:
  std::map<std::string, QAction*> actions_;
};

}  // namespace gazewright
