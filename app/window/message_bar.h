#pragma once

#include <QFrame>
#include <functional>
#include <vector>

#include "app/plots/theme.h"
#include "core/files/rig_file.h"

class QLabel;
class QPlainTextEdit;
class QToolButton;

namespace gazewright {

/// "owl.rig.yaml: it cannot be read – check its rights", for a line of its own.
QString sentence_of(const Diagnostic& diagnostic);

/// What happened, in the window and not in a box: one sentence, or all problems of a file.
class MessageBar : public QFrame {
  Q_OBJECT
 public:
  explicit MessageBar(QWidget* parent = nullptr);

  void showNotice(const QString& text);
  /// With a button that takes back what was done.
  void showNotice(const QString& text, std::function<void()> undo);
  void withdraw(const QString& notice);  ///< if it is still the one shown
  void showFault(const QString& text);
  /// Every diagnostic with file, line, column, problem and mend, under one heading.
  void showProblems(const QString& heading, const std::vector<Diagnostic>& diagnostics);
  QString text() const;  ///< everything it says; empty while hidden
  void setTheme(const Theme& theme);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void fitList();
  void present(const QString& heading, const QString& list, bool fault);
  void colour();

  QLabel* heading_;
  QPlainTextEdit* list_ = nullptr;
  QToolButton *undo_, *close_;
  std::function<void()> take_back_;
  Theme theme_;
  bool fault_ = false;
};

}  // namespace gazewright
