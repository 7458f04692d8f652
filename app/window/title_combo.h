#pragma once

#include <QComboBox>

namespace gazewright {

/// A list that serves as a heading: as wide as its entry, and where there is less room the entry is
/// elided, with its "▾" kept.
class TitleCombo : public QComboBox {
 public:
  explicit TitleCombo(QWidget* parent = nullptr);
  QString shownText() const;  ///< what is painted
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace gazewright
