#pragma once

#include <QDialog>

class QLineEdit;
class QListWidget;
class QTextBrowser;

namespace gazewright {

/// The offline help: the Markdown pages of a folder, with a search.
class Handbook : public QDialog {
  Q_OBJECT
 public:
  explicit Handbook(const QString& folder, QWidget* parent = nullptr);

 private:
  void fill(const QString& search);

  QString folder_;
  QLineEdit* search_;
  QListWidget* pages_;
  QTextBrowser* text_;
};

}  // namespace gazewright
