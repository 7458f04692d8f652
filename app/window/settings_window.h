#pragma once

#include <QDialog>
#include <functional>
#include <vector>

#include "app/window/settings.h"

class QCheckBox;
class QComboBox;
class QFormLayout;

namespace gazewright {

class MessageBar;

/// The settings, beside the window; what is chosen counts at once. It keeps nothing itself: what is
/// wanted goes out as signals.
class SettingsWindow : public QDialog {
  Q_OBJECT
 public:
  /// A folder of the user's, and what its button does.
  struct Folder {
    QString name, path, help;
    std::function<void()> open;
  };

  SettingsWindow(const std::vector<Folder>& folders, QWidget* parent);

  void setPreferences(const Preferences& preferences);
  MessageBar& messages() { return *messages_; }

 signals:
  void changed(const gazewright::Preferences& preferences);
  void defaultsAsked();
  void layoutResetAsked();

 private:
  QComboBox* addChoice(QFormLayout* form, const QString& label, const char* name,
                       const std::vector<std::pair<QString, QVariant>>& entries);
  void addFolder(QFormLayout* form, const Folder& folder);
  void addChoices(QFormLayout* form);
  QWidget* buttons();
  void take();

  MessageBar* messages_;
  QComboBox *theme_, *text_, *language_, *paper_, *start_;
  QCheckBox* calm_;
};

}  // namespace gazewright
