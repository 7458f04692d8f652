#pragma once

#include <QDialog>
#include <QFutureWatcher>
#include <array>

#include "app/plots/chart_canvas.h"
#include "app/plots/measured_log.h"

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QProgressBar;
class QPushButton;

namespace gazewright {

/// A measured move over the computed step, with the difference in a strip below. Shift, scale and
/// offset are typed; the shift is also found. It keeps the step of when it was opened.
class LogDialog : public QDialog {
  Q_OBJECT
 public:
  LogDialog(const Chart& step, const Theme& theme, QWidget* parent);

  ~LogDialog() override;

  /// Reads it off the window's thread, with progress; the log before stays until it is there.
  void openLog(const QString& file);
  void cancelReading();
  bool isReading() const { return reading_.isRunning(); }
  void setLog(const QString& text);  ///< the text of such a file
  void findShift();
  void setFit(const LogFit& fit);
  LogFit fit() const;
  void setAxis(Axis axis);
  LogResidual residual() const;
  QString words() const;  ///< what it says of the two, or what is wrong with the file

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void takeRead();
  void showReading(bool on);
  MeasuredLog model() const;  ///< of the chosen axis
  QWidget* settings();
  void refresh();

  Chart step_;
  std::array<MeasuredLog, 2> models_;  ///< by Axis
  std::optional<MeasuredLog> log_;
  QString problem_;
  QComboBox* axis_;
  QDoubleSpinBox *shift_ms_, *scale_, *offset_deg_;
  QPushButton *find_, *cancel_;
  QProgressBar* progress_;
  QFutureWatcher<ReadLog> reading_;
  QLabel* words_;
  ChartCanvas *above_ = nullptr, *below_ = nullptr;
};

}  // namespace gazewright
