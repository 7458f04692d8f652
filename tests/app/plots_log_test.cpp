#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/measured_log.h"
#include "app/window/log_dialog.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

/// A measured move beside the computed one.
namespace gazewright {
namespace {

TEST(MeasuredLog, IsReadInTheUnitsThatItsFirstLineNames) {
  const ReadLog plain = read_log("0,0\n0.5,90\n");
  ASSERT_TRUE(plain.log) << plain.problem.toStdString();
  EXPECT_EQ(plain.log->time_s, (QVector<double>{0, 0.5}));
  EXPECT_EQ(plain.log->angle_deg, (QVector<double>{0, 90}));
  const ReadLog named =
      read_log("time / ms;angle (rad);current\r\n0;0;1\r\n250,5;3,14159265358979;2\r\n");
  ASSERT_TRUE(named.log) << named.problem.toStdString();
  EXPECT_DOUBLE_EQ(named.log->time_s[1], 0.2505) << "a decimal comma, where a semicolon parts";
  EXPECT_NEAR(named.log->angle_deg[1], 180, 1e-11);  // the digits written: 3e-15 of 180
}

TEST(MeasuredLog, SaysWhichLineIsWrong) {
  EXPECT_EQ(read_log("time,angle\n0,0\n1,fast\n").problem,
            "line 3: \"1,fast\" are not two numbers");
  EXPECT_EQ(read_log("0,0\n1,1\n1,2\n").problem, "line 3: the time has to rise from line to line");
  EXPECT_EQ(read_log("0\n").problem, "line 1: two columns are wanted, time and angle");
  EXPECT_EQ(read_log("0,0\n1,nan\n").problem, "line 2: \"1,nan\" are not two numbers");
  EXPECT_FALSE(read_log("").problem.isEmpty());
}

/// A ramp of 100 °/s from 0.1 s on, to 20°.
MeasuredLog ramp(double start_s, double step_s) {
  MeasuredLog log;
  for (int i = 0; i <= 200; ++i) {
    const double t = i * step_s;
    log.time_s.append(t);
    log.angle_deg.append(std::clamp((t - start_s) * 100, 0.0, 20.0));
  }
  return log;
}

TEST(MeasuredLog, ResidualIsLogLessModelBetweenItsSamples) {
  const MeasuredLog model{{0, 1, 2}, {0, 10, 10}};
  const MeasuredLog log{{-0.5, 0.25, 1.5, 9}, {1, 3, 9, 0}};
  const LogResidual residual = residual_of(model, log, {});
  EXPECT_EQ(residual.time_s, (QVector<double>{0.25, 1.5}));
  EXPECT_EQ(residual.angle_deg, (QVector<double>{0.5, -1}));
  EXPECT_EQ(residual.largest_deg, 1);
  EXPECT_DOUBLE_EQ(residual.rms_deg, std::sqrt((0.25 + 1) / 2));
  const LogResidual scaled =
      residual_of(model, log, {.shift_s = 0.25, .scale = 2, .offset_deg = -1});
  EXPECT_EQ(scaled.time_s, (QVector<double>{0.5, 1.75}));
  EXPECT_EQ(scaled.angle_deg, (QVector<double>{0, 7}));
  EXPECT_TRUE(std::isnan(residual_of(model, log, {.shift_s = 50}).rms_deg));
}

TEST(MeasuredLog, ShiftIsFoundAgain) {
  const MeasuredLog model = ramp(0.1, 0.002);
  MeasuredLog log = ramp(0.1, 0.002);
  for (double& time_s : log.time_s) time_s += 17.3217;
  const auto shift = best_shift_s(model, log, {});
  ASSERT_TRUE(shift);
  // the last round looks in steps of 0.4 s / 2 / 200 / 25³ · 4/50, below 1e-8 s
  EXPECT_NEAR(*shift, -17.3217, tol(1e-6));
}

TEST(LogDialog, ShowsALogOverTheStepAndWhatDiffers) {
  const Rig rig = tests::owl();
  const Analysis analysis = analyse(rig, {.remedies = false});
  const Chart step = step_chart({&rig, &analysis});
  auto* dialog = new LogDialog(step, theme_for(ThemeKind::light), nullptr);
  dialog->show();
  const Trace& trace = analysis.of(Axis::tilt).step;
  QString text = "t / s,angle / deg\n";
  for (std::size_t i = 0; i < trace.time_s.size(); i += 3) {
    text += QString("%1,%2\n")
                .arg(trace.time_s[i] + 0.020, 0, 'g', 12)
                .arg(trace.angle_rad[i] * chart_parts::kDegPerRad / 2 + 1, 0, 'g', 12);
  }
  dialog->setAxis(Axis::tilt);
  dialog->setLog("nothing of the sort");
  EXPECT_TRUE(dialog->words().contains("two columns")) << dialog->words().toStdString();
  dialog->setLog(text);
  EXPECT_GT(dialog->residual().rms_deg, 1) << "neither shifted nor scaled yet";
  dialog->setFit({.shift_s = 0, .scale = 2, .offset_deg = -2});
  dialog->findShift();
  EXPECT_NEAR(dialog->fit().shift_s, -0.020, tol(1e-5));  // the field keeps microseconds
  // 1e-6 s at the 900°/s of the owl's limit
  EXPECT_LT(dialog->residual().largest_deg, 0.01);
  EXPECT_TRUE(dialog->words().contains("points compared"));
  const QList<ChartCanvas*> canvases = dialog->findChildren<ChartCanvas*>();
  ASSERT_EQ(canvases.size(), 2);
  EXPECT_EQ(canvases[0]->chart().series.size(), 2);
  EXPECT_EQ(canvases[1]->chart().series.size(), 1);
  dialog->openLog("/no/such/log.csv");
  ASSERT_TRUE(QTest::qWaitFor([dialog] { return !dialog->isReading(); }, 60'000));
  QCoreApplication::processEvents();
  EXPECT_TRUE(dialog->words().contains("cannot be read"));
  delete dialog;
}

TEST(MeasuredLog, IsReadOnlyAsLongAsIsWanted) {
  QString text;
  for (int i = 0; i < 20'000; ++i) text += QString("%1,1\n").arg(i);
  double last = 0;
  const ReadLog whole = read_log(text, [&](double part) {
    EXPECT_GE(part, last);
    last = part;
    return true;
  });
  ASSERT_TRUE(whole.log);
  EXPECT_EQ(whole.log->time_s.size(), 20'000);
  EXPECT_GT(last, 0.5);
  EXPECT_LE(last, 1);
  const ReadLog half = read_log(text, [](double part) { return part < 0.5; });
  EXPECT_FALSE(half.log);
  EXPECT_EQ(half.problem, "cancelled");
}

TEST(LogDialog, ReadsALargeLogBesideTheWindowAndLeavesTheOldOneWhereItIsCancelled) {
  const Rig rig = tests::owl();
  const Analysis analysis = analyse(rig, {.remedies = false});
  LogDialog dialog(step_chart({&rig, &analysis}), theme_for(ThemeKind::light), nullptr);
  dialog.setLog("0,0\n0.1,20\n0.2,40\n");
  const QString before = dialog.words();
  const QTemporaryDir folder;
  QFile file(folder.filePath("log.csv"));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  QByteArray lines;
  for (int i = 0; i < 500'000; ++i) lines += QByteArray::number(i) + "e-6,20\n";
  file.write(lines);
  file.close();
  dialog.openLog(file.fileName());
  EXPECT_TRUE(dialog.isReading());
  dialog.cancelReading();
  ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog.isReading(); }, 60'000));
  QCoreApplication::processEvents();
  EXPECT_EQ(dialog.words(), before);
  dialog.openLog(file.fileName());
  ASSERT_TRUE(QTest::qWaitFor([&] { return dialog.words() != before; }, 60'000));
  EXPECT_TRUE(dialog.words().contains("points compared")) << dialog.words().toStdString();
}

}  // namespace
}  // namespace gazewright
