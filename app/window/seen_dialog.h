#pragma once

#include <QDialog>

namespace gazewright {

/// A window beside the main one that says when it comes into sight and when it goes.
class SeenDialog : public QDialog {
  Q_OBJECT
 public:
  using QDialog::QDialog;

 signals:
  void shownOrHidden();

 protected:
  void showEvent(QShowEvent* event) override {
    QDialog::showEvent(event);
    emit shownOrHidden();
  }
  void hideEvent(QHideEvent* event) override {
    QDialog::hideEvent(event);
    emit shownOrHidden();
  }
};

}  // namespace gazewright
