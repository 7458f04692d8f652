#pragma once

#include <QFrame>
#include <string>

#include "core/analysis/missing.h"

class QLabel;
class QToolButton;

namespace gazewright {

/// While figures of the moves wait for inputs: how many are missing, and the few to fill in first
/// by part, each a link to its field, with how much waits for it. So plots and tiles that are empty
/// say what to do.
class MissingBar : public QFrame {
  Q_OBJECT
 public:
  explicit MissingBar(QWidget* parent = nullptr);

  void setAnalysis(const Rig& rig, const Analysis& analysis);
  const std::string& path() const;  ///< of the entry that the button leads to
  QString text() const;
  QLabel* label() const { return text_; }
  QToolButton* button() const { return enter_; }

 signals:
  void fieldChosen(const QString& path);

 private:
  void explain(const QString& path);

  MissingInputs missing_;
  QLabel* text_;
  QToolButton* enter_;
};

}  // namespace gazewright
