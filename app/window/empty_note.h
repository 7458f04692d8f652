#pragma once

#include <QWidget>
#include <functional>

class QToolButton;

namespace gazewright {

/// In the middle of a view that has nothing to show: that it is empty, how to fill it, and the
/// button that does. It covers the view, or the part of it that `area` gives, and follows its size.
class EmptyNote : public QWidget {
  Q_OBJECT
 public:
  EmptyNote(QWidget* view, const QString& heading, const QString& line, const QString& button,
            std::function<QRect()> area = {});

  QToolButton* button() const { return button_; }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void cover(const QWidget& view);

  std::function<QRect()> area_;
  QToolButton* button_;
};

}  // namespace gazewright
