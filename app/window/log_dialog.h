#pragma once

#include <QDialog>
#include <array>

#include "app/plots/chart_canvas.h"
#include "app/plots/measured_log.h"

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QPushButton;

namespace gazewright {

/// A measured move over the computed step, with the difference in a strip below. Shift, scale and
/// offset are typed; the shift is also found. It keeps the step of when it was opened.
class LogDialog : public QDialog {
  Q_OBJECT
 public:
  LogDialog(const Chart& step, const Theme& theme, QWidget* parent);

  void openLog(const QString& file);
  void setLog(const QString& text);  ///< the text of such a file
  void findShift();
  void setFit(const LogFit& fit);
  LogFit fit() const;
  void setAxis(Axis axis);
  LogResidual residual() const;
  QString words() const;  ///< what it says of the two, or what is wrong with the file

 private:
  MeasuredLog model() const;  ///< of the chosen axis
  QWidget* settings();
  void refresh();

  Chart step_;
  std::array<MeasuredLog, 2> models_;  ///< by Axis
  std::optional<MeasuredLog> log_;
  QString problem_;
  QComboBox* axis_;
  QDoubleSpinBox *shift_ms_, *scale_, *offset_deg_;
  QPushButton* find_;
  QLabel* words_;
  ChartCanvas *above_, *below_;
};

}  // namespace gazewright
