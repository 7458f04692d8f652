#pragma once

#include <QString>
#include <QVector>
#include <functional>
#include <optional>

/// A move as it was measured, beside the one computed.
namespace gazewright {

/// Angle over time, as a logger wrote it. Times rise.
struct MeasuredLog {
  QVector<double> time_s, angle_deg;
};

struct ReadLog {
  std::optional<MeasuredLog> log;
  QString problem;  ///< where there is none: which line, and what it should be
};

/// Two columns, time and angle, with comma, semicolon or tab between them; more columns are left
/// aside. A first line of words may name the units: s (else), ms or us; deg (else) or rad.
/// @param go_on  asked now and then with the part that is read; false: it stops there.
ReadLog read_log(const QString& text, const std::function<bool(double part)>& go_on = {});

/// How a log is laid over the model: t' = t + shift, angle' = scale·angle + offset.
struct LogFit {
  double shift_s = 0;
  double scale = 1;
  double offset_deg = 0;
};
MeasuredLog fitted(const MeasuredLog& log, const LogFit& fit);

/// Log less model at the log's times inside those of the model, between whose samples the angle is
/// interpolated linearly.
struct LogResidual {
  QVector<double> time_s, angle_deg;
  double rms_deg = 0, largest_deg = 0;  ///< NaN where they share no time
};
/// @pre model times rise
LogResidual residual_of(const MeasuredLog& model, const MeasuredLog& log, const LogFit& fit);

/// The shift with the least rms, scale and offset as they are; within half of the model's length
/// either way, where at least half of the log stays inside the model. Empty: none.
std::optional<double> best_shift_s(const MeasuredLog& model, const MeasuredLog& log, LogFit fit);

}  // namespace gazewright
