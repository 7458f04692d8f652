#pragma once

#include <QFrame>
#include <string>

#include "core/analysis/analysis.h"

class QLabel;
class QToolButton;

namespace gazewright {

/// While figures of the moves wait for inputs: what most of them wait for, and a button to enter
/// it. So plots and tiles that are empty say what to do.
class MissingBar : public QFrame {
  Q_OBJECT
 public:
  explicit MissingBar(QWidget* parent = nullptr);

  void setAnalysis(const Rig& rig, const Analysis& analysis);
  const std::string& path() const { return path_; }  ///< of the entry it leads to
  QString text() const;
  QToolButton* button() const { return enter_; }

 signals:
  void fieldChosen(const QString& path);

 private:
  std::string path_;
  QLabel* text_;
  QToolButton* enter_;
};

}  // namespace gazewright
