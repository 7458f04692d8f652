#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/analysis/analysis.h"
#include "core/analysis/context.h"
#include "core/files/rig_file.h"
#include "core/rig/fields.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::finding;
using tests::owl;

Analysis figures_of(const Rig& rig) { return analyse(rig, {.remedies = false}); }

/// The owl with thermal data of both motors and all details.
Rig detailed_owl() {
  Rig rig = owl();
  for (const Axis axis : kAxes) {
    Motor& motor = rig.axis(axis).motor;
    motor.thermal_resistance_KpW = si_quantity(4.1);
    motor.thermal_time_s = si_quantity(840);
    motor.winding_limit_K = si_quantity(393.15);
    motor.winding_to_housing_KpW = si_quantity(1.2);
    motor.winding_time_s = si_quantity(18);
    motor.housing_to_mount_KpW = si_quantity(2);
    motor.mount_material = "petg";
    motor.magnet_limit_K = si_quantity(373.15);
    motor.bearing_limit_K = si_quantity(373.15);
  }
  return rig;
}

DutyMove duty_move(double pan_rad, double tilt_rad, double dwell_s) {
  return {si_quantity(pan_rad), si_quantity(tilt_rad), si_quantity(dwell_s)};
}

TEST(Heat, TheContractsFiguresNeedNoDetails) {
  const Analysis a = figures_of(owl());
  for (const char* id : {"rms_current", "winding_temperature", "hold_temperature",
                         "mount_temperature", "time_to_limit"})
    EXPECT_TRUE(a.value(std::string("pan.heat.") + id)) << id;
  EXPECT_EQ(a.figure("tilt.heat.winding_temperature")->because,
            "needs tilt.motor.thermal_resistance, tilt.motor.thermal_time");
  EXPECT_TRUE(a.value("tilt.heat.rms_current"));
  EXPECT_TRUE(a.figure("pan.heat.housing_temperature")->is_aside);
  EXPECT_TRUE(a.figure("pan.heat.magnet_temperature")->is_aside);
  EXPECT_EQ(finding(a, "pan.heat.mount"), nullptr);
  EXPECT_EQ(finding(a, "tilt.heat.winding")->verdict, Verdict::unknown);
  EXPECT_EQ(finding(a, "tilt.heat.hold"), nullptr);  // says no more than that
  // One node: without details the bracket is as hot as the winding.
  EXPECT_NEAR(*a.value("pan.heat.mount_temperature"), *a.value("pan.heat.winding_temperature"),
              tol(1e-9));
}

TEST(Heat, TheRmsCurrentIsThatOfTheTraceOverThePaceOfTheTask) {
  const Analysis a = figures_of(owl());
  const Trace& trace = a.of(Axis::pan).step;
  double sum = 0;
  for (std::size_t k = 1; k < trace.time_s.size(); ++k)
    sum += (std::pow(trace.current_A[k], 2) + std::pow(trace.current_A[k - 1], 2)) / 2 / 8000;
  // 40 moves a minute; the pan stands upright, so nothing is held in between. The trapezoid rule
  // misses how the current bends within a sample, by up to 3e-3 of i² on light axes.
  EXPECT_NEAR(*a.value("pan.heat.rms_current") / std::sqrt(sum / 1.5), 1, tol(3e-3));
  EXPECT_NEAR(*a.value("pan.heat.cyclic_duration_factor"), *a.value("pan.step.settle_time") / 1.5,
              tol(1e-12));
}

TEST(Heat, TheWindingEndsByHandWhereTheDutyIsShortAgainstIt) {
  const Analysis a = figures_of(owl());
  // 1.5 s against 14 min: as steady as its mean losses, but for half of a move's own rise.
  const double copper_W = 1.5 * 0.062 * std::pow(*a.value("pan.heat.rms_current"), 2);
  const double gear_W = *a.value("pan.heat.gear_loss"), grows = 4.1 * copper_W / 255;
  const double rise_20 = (10 + 4.1 * (copper_W + gear_W)) / (1 - grows);
  EXPECT_NEAR(*a.value("pan.heat.winding_temperature"), 293.15 + rise_20, tol(0.1));
}

TEST(Heat, TheLastingCurrentByHand) {
  const Analysis a = figures_of(owl());
  // 90 K through 4.1 K/W, copper 100/255 above 20 °C.
  const double lasting_A = std::sqrt(90 / 4.1 / (1.5 * 0.062 * (1 + 100.0 / 255)));
  EXPECT_NEAR(*a.value("pan.heat.continuous_current"), lasting_A, tol(1e-12));
  EXPECT_NEAR(*a.value("pan.heat.runaway_current"), std::sqrt(255 / 4.1 / 1.5 / 0.062), tol(1e-12));
  EXPECT_LT(*a.value("pan.heat.stall_current"), lasting_A);
  EXPECT_GT(*a.value("pan.heat.intermittent_current"), lasting_A);
  EXPECT_GT(*a.value("pan.heat.time_at_1_5"), *a.value("pan.heat.time_at_2"));
  EXPECT_GT(*a.value("pan.heat.time_at_2"), *a.value("pan.heat.time_at_3"));
}

TEST(Heat, TheCurrentsOfShortAndIntermittentDutyAreThoseOfTwoCapacities) {
  Rig rig = detailed_owl();
  for (Quantity* limit : {&rig.pan.motor.peak_current_A, &rig.pan.drive.current_limit_A})
    limit->si = 500;
  const Analysis a = figures_of(rig);
  // SciPy 1.10.1 (Radau, rtol 1e-12, and brentq): 1.2 and 2.9 K/W, 18 and 840 s, 30 °C, limit 120
  // °C, 62 mΩ, 600 s from cold.
  EXPECT_NEAR(*a.value("pan.heat.short_time_current"), 16.7988311836, tol(1e-7));
  // Its cycle of 1.5 s is short against 18 s, but not nothing: the mean of i² is the lasting one's,
  // less what the winding rises in a move.
  const double factor = *a.value("pan.heat.cyclic_duration_factor");
  const double by_mean_A = *a.value("pan.heat.continuous_current") / std::sqrt(factor);
  EXPECT_LT(*a.value("pan.heat.intermittent_current"), by_mean_A);
  EXPECT_NEAR(*a.value("pan.heat.intermittent_current") / by_mean_A, 1, tol(0.03));
}

TEST(Heat, TheCurrentsOfDutyTypesEndAtTheDrivesLimit) {
  Rig rig = detailed_owl();
  rig.pan.drive.current_limit_A = si_quantity(13);
  const Analysis a = figures_of(rig);
  EXPECT_EQ(a.value("pan.heat.short_time_current"), 13);
  EXPECT_EQ(a.value("pan.heat.intermittent_current"), 13);
}

/// The tilt of this sample hunts in its gap and never settles.
Rig heron() {
  return load_rig(std::string(GAZEWRIGHT_SOURCE_DIR) + "/sample-rigs/hasty-heron.rig.yaml")
      .rig.value();
}

TEST(Heat, AnAxisThatNeverSettlesDoesNotSlowTheDuty) {
  Rig rig = heron();
  const Analysis a = figures_of(rig);
  ASSERT_TRUE(a.value("pan.step.settle_time"));
  ASSERT_FALSE(a.value("tilt.step.settle_time"));
  // ∫i² of the pan's move in a simulation written anew in Python (NumPy, fixed steps of 5 µs) over
  // the 3 s of 20 moves a minute: 0.4234 A.
  EXPECT_NEAR(*a.value("pan.heat.rms_current"), 0.4234, tol(1e-3));
  EXPECT_NEAR(*a.value("pan.heat.cyclic_duration_factor"), *a.value("pan.step.settle_time") / 3,
              tol(1e-12));
  EXPECT_EQ(a.value("tilt.heat.cyclic_duration_factor"), 1);
  // Twice the moves are twice the pan's heat, which stands upright and holds nothing.
  rig.task.moves_per_minute = si_quantity(40);
  EXPECT_NEAR(*figures_of(rig).value("pan.heat.rms_current") / *a.value("pan.heat.rms_current"),
              std::sqrt(2), tol(1e-3));
}

TEST(Heat, ThePaceFailsWithoutANumberWhereAnAxisNeverSettles) {
  const Analysis a = analyse(heron());
  const Finding* tilt = finding(a, "tilt.duty.pace");
  ASSERT_NE(tilt, nullptr);
  EXPECT_EQ(tilt->verdict, Verdict::fails);
  EXPECT_FALSE(tilt->demand || tilt->capacity || tilt->margin);
  EXPECT_EQ(tilt->because,
            "it never settles after the task's move, so the picture is steady at no pace");
  for (const Remedy& remedy : tilt->remedies)
    EXPECT_NE(remedy.path, "task.duty.moves_per_minute") << remedy.text;
  const Finding* pan = finding(a, "pan.duty.pace");  // settles in time itself
  EXPECT_EQ(pan->verdict, Verdict::holds);
  EXPECT_EQ(pan->demand, a.value("pan.step.settle_time"));
  EXPECT_TRUE(pan->because.ends_with("; the other axis never settles")) << pan->because;
}

TEST(Heat, APaceThatIsTooFastToSettleStillHeatsAtThatPace) {
  // A move is due at nine tenths of the time until they settle: long after they are there.
  Rig rig = owl();
  const Analysis slow = figures_of(rig);
  const double settle_s =
      std::max(*slow.value("pan.step.settle_time"), *slow.value("tilt.step.settle_time"));
  rig.task.moves_per_minute.si = 60 / (0.9 * settle_s);
  const Analysis fast = figures_of(rig);
  EXPECT_EQ(finding(fast, "pan.duty.pace")->verdict, Verdict::fails);
  const double asked_s = 0.9 * settle_s;
  const Trace& trace = fast.of(Axis::pan).step;
  double sum = 0;
  for (std::size_t k = 1; k < trace.time_s.size() && trace.time_s[k] <= asked_s; ++k)
    sum += (std::pow(trace.current_A[k], 2) + std::pow(trace.current_A[k - 1], 2)) / 2 *
           trace.sample_time_s;
  EXPECT_NEAR(*fast.value("pan.heat.rms_current") / std::sqrt(sum / asked_s), 1, tol(3e-3));
}

TEST(Heat, AListToAndFroIsTheTasksOwnDuty) {
  Rig rig = detailed_owl();
  const Analysis task = figures_of(rig);
  const double move_s =
      std::max(*task.value("pan.step.settle_time"), *task.value("tilt.step.settle_time"));
  const double pan = rig.task.pan_move_rad.value() / 2, tilt = rig.task.tilt_move_rad.value() / 2;
  rig.duty = {duty_move(pan, tilt, 1.5 - move_s), duty_move(-pan, -tilt, 1.5 - move_s)};
  const Analysis list = figures_of(rig);
  // Alike but for gravity at the tilt's rests and the way back: the encoder rounds down both ways.
  EXPECT_NEAR(*list.value("pan.heat.rms_current") / *task.value("pan.heat.rms_current"), 1,
              tol(0.02));
  EXPECT_NEAR(*list.value("tilt.heat.rms_current") / *task.value("tilt.heat.rms_current"), 1,
              tol(0.05));
  EXPECT_NEAR(*list.value("pan.heat.cyclic_duration_factor"),
              *task.value("pan.heat.cyclic_duration_factor"), tol(0.02));
  // A drag estimates them from the task's step: no less, and not much more.
  const Analysis quick = analyse(rig, {.quick = true});
  EXPECT_NEAR(*quick.value("pan.heat.rms_current") / *list.value("pan.heat.rms_current"), 1,
              tol(0.05));
}

TEST(Heat, AListOfOnePlaceOnlyHoldsIt) {
  Rig rig = detailed_owl();
  rig.duty = {duty_move(0, 0.3, 10)};
  const Analysis a = figures_of(rig);
  EXPECT_EQ(a.value("pan.heat.rms_current"), 0);
  EXPECT_EQ(a.value("pan.heat.cyclic_duration_factor"), 0);
  // The tilt holds its camera: m·g·(x cos θ − z sin θ) of 48 g at (38, 2) mm, through 9:1.
  const double pull_Nm = 0.048 * 9.80665 * (0.038 * std::cos(0.3) - 0.002 * std::sin(0.3));
  EXPECT_NEAR(*a.value("tilt.heat.rms_current"),
              pull_Nm / 9 / *a.value("tilt.motor.torque_constant"), tol(1e-9));
}

TEST(Heat, AHeldLoadHeatsOneWindingMost) {
  Rig rig = detailed_owl();
  rig.on_tilt[1].mass_kg = si_quantity(1.5);
  const Analysis a = figures_of(rig);
  const double current_A =
      1.5 * 9.80665 * std::hypot(0.038, 0.002) / 9 / *a.value("tilt.motor.torque_constant");
  EXPECT_NEAR(*a.value("tilt.heat.hold_current"), current_A, tol(1e-6));
  // Closed form of the windings, by hand: 3·1.2 K/W each, the worst with R·i².
  const double alpha = 1.0 / 255, p = 0.062 * current_A * current_A;
  const double all = p / (1 - 3.6 * p * alpha) + 0.5 * p / (1 - 0.9 * p * alpha);
  const double housing = (10 + 2.9 * all) / (1 - 2.9 * all * alpha);
  EXPECT_NEAR(*a.value("tilt.heat.hold_temperature"),
              293.15 + housing + 3.6 * p / (1 - 3.6 * p * alpha) * (1 + alpha * housing),
              tol(1e-5));
}

TEST(Heat, RunsAwayAsAFindingThatFailsAndNotAsANumber) {
  Rig rig = detailed_owl();
  rig.pan.motor.thermal_resistance_KpW = si_quantity(2000);
  const Analysis a = analyse(rig);
  EXPECT_FALSE(a.value("pan.heat.winding_temperature"));
  EXPECT_TRUE(a.figure("pan.heat.winding_temperature")->because.starts_with("thermal runaway"));
  const Finding* winding = finding(a, "pan.heat.winding");
  ASSERT_NE(winding, nullptr);
  EXPECT_EQ(winding->verdict, Verdict::fails);
  EXPECT_TRUE(winding->because.starts_with("thermal runaway over the duty")) << winding->because;
  EXPECT_FALSE(winding->remedies.empty());
  EXPECT_TRUE(a.heat[0].runs_away);
}

TEST(Heat, TheBracketIsHeldAgainstItsMaterialAndEitherMayBeEntered) {
  Rig rig = detailed_owl();
  const auto capacity = [](const Rig& of) {
    const Analysis a = figures_of(of);
    const Finding* found = finding(a, "pan.heat.mount");
    return found == nullptr ? std::nullopt : found->capacity;
  };
  EXPECT_NEAR(capacity(rig).value_or(0), 65 - 30, tol(1e-9));  // petg's 70 ± 5 over the air
  rig.materials.emplace_back();
  rig.materials[0].name = "petg";
  Analysis a = figures_of(rig);
  EXPECT_EQ(finding(a, "pan.heat.mount")->verdict, Verdict::unknown) << "its own says nothing";
  EXPECT_NE(finding(a, "pan.heat.mount")->because.find("“petg”"), std::string::npos);
  rig.materials[0].softening_K = si_quantity(353.15);
  EXPECT_NEAR(capacity(rig).value_or(0), 80 - 30, tol(1e-9));
  rig.materials[0].softening_K.spread_si = 3;
  EXPECT_NEAR(capacity(rig).value_or(0), 77 - 30, tol(1e-9));
  rig.pan.motor.mount_limit_K = si_quantity(363.15);
  EXPECT_NEAR(capacity(rig).value_or(0), 90 - 30, tol(1e-9));
  rig.pan.motor.mount_limit_K = {};
  rig.pan.motor.mount_material = "cheese";
  a = figures_of(rig);
  EXPECT_EQ(finding(a, "pan.heat.mount")->verdict, Verdict::unknown);
  EXPECT_NE(finding(a, "pan.heat.mount")->because.find("“cheese”"), std::string::npos);
}

TEST(Heat, TheAirIsTheWarmestThatItMayBe) {
  Rig rig = detailed_owl();
  const double at = *figures_of(rig).value("pan.heat.continuous_current");
  rig.surroundings.temperature_K.spread_si = 10;
  const double warmer = *figures_of(rig).value("pan.heat.continuous_current");
  EXPECT_NEAR(warmer / at, std::sqrt(80.0 / 90), tol(1e-12));
  EXPECT_NEAR(*finding(figures_of(rig), "pan.heat.mount")->capacity, 65 - 40, tol(1e-9));
}

TEST(Heat, TheInsulationsClassStandsInForTheLimitAndBoundsIt) {
  Rig rig = detailed_owl();
  rig.pan.motor.winding_limit_K = {};
  rig.pan.motor.insulation.value = "F";
  Analysis a = figures_of(rig);
  EXPECT_NEAR(a.heat[0].winding_limit_K, 273.15 + 155, tol(1e-9));
  EXPECT_EQ(finding(a, "pan.heat.insulation"), nullptr);
  rig.pan.motor.winding_limit_K = si_quantity(273.15 + 170);
  a = figures_of(rig);
  EXPECT_EQ(finding(a, "pan.heat.insulation")->verdict, Verdict::fails);
  rig.pan.motor.winding_limit_K = si_quantity(273.15 + 120);
  EXPECT_EQ(finding(figures_of(rig), "pan.heat.insulation")->verdict, Verdict::holds);
}

TEST(Heat, APaceThatLeavesNoTimeFails) {
  Rig rig = owl();
  rig.task.moves_per_minute = si_quantity(1000);
  const Analysis a = analyse(rig);
  const Finding* pace = finding(a, "pan.duty.pace");
  ASSERT_NE(pace, nullptr);
  EXPECT_EQ(pace->verdict, Verdict::fails);
  ASSERT_FALSE(pace->remedies.empty());
  EXPECT_EQ(pace->remedies[0].path, "task.duty.moves_per_minute");
  rig.task.moves_per_minute = {};
  EXPECT_EQ(figures_of(rig).figure("pan.heat.rms_current")->because,
            "needs task.duty.moves_per_minute");
}

TEST(Heat, ADutyBeyondTheTravelFails) {
  Rig rig = detailed_owl();
  rig.duty = {duty_move(0, 0, 1), duty_move(4, 0, 1)};
  const Analysis a = figures_of(rig);
  EXPECT_EQ(finding(a, "pan.duty.travel")->verdict, Verdict::fails);
  EXPECT_EQ(finding(a, "tilt.duty.travel")->verdict, Verdict::holds);
  EXPECT_EQ(finding(a, "pan.duty.pace"), nullptr);
}

TEST(Heat, LongerRestsAreOfferedAndHold) {
  Rig rig = detailed_owl();
  rig.duty = {duty_move(0.4, 0.2, 0.05), duty_move(-0.4, -0.2, 0.05)};
  rig.pan.motor.thermal_resistance_KpW = si_quantity(35);
  const Analysis a = analyse(rig);
  const Finding* winding = finding(a, "pan.heat.winding");
  ASSERT_EQ(winding->verdict, Verdict::fails) << winding->because;
  ASSERT_FALSE(winding->remedies.empty());
  EXPECT_EQ(winding->remedies[0].path, "duty[0].dwell") << winding->remedies[0].text;
  ASSERT_EQ(winding->remedies[0].also.size(), 1u);
  rig.duty[0].dwell_s.si = winding->remedies[0].value_si;
  rig.duty[1].dwell_s.si = winding->remedies[0].also[0].value_si;
  EXPECT_NE(finding(figures_of(rig), "pan.heat.winding")->verdict, Verdict::fails);
}

TEST(Heat, AWindingPartThatIsNoPartIsExplained) {
  Rig rig = detailed_owl();
  rig.pan.motor.winding_to_housing_KpW = si_quantity(5);
  const Analysis a = figures_of(rig);
  EXPECT_FALSE(a.value("pan.heat.winding_temperature"));
  EXPECT_TRUE(a.figure("pan.heat.winding_temperature")->because.starts_with("winding to housing"));
  EXPECT_EQ(finding(a, "pan.heat.winding")->verdict, Verdict::unknown);
}

TEST(Heat, TheCurveRisesFromTheAirToTheSteadyDuty) {
  const Analysis a = figures_of(detailed_owl());
  const HeatCurve& curve = a.heat[0];
  ASSERT_GT(curve.time_s.size(), 100u);
  EXPECT_NEAR(curve.winding_K.front(), 303.15, tol(1e-9));
  // e^−5 of the rise is left.
  const double end_K = *a.value("pan.heat.winding_temperature");
  EXPECT_NEAR(curve.winding_K.back(), end_K, 0.02 * (end_K - 303.15));
  for (std::size_t k = 0; k < curve.time_s.size(); ++k)
    EXPECT_GE(curve.winding_K[k], curve.mount_K[k] - 1e-9);
  ASSERT_EQ(curve.times.size(), 5u);
  EXPECT_FALSE(curve.times[0].turning_s);  // what it bears without end
  EXPECT_TRUE(analyse(detailed_owl(), {.quick = true}).heat[0].time_s.empty());
}

TEST(Heat, IsFiniteOrExplainedForRandomMotorsAndDuties) {
  std::mt19937 random(20262);
  std::uniform_real_distribution<double> decades(-2, 2), angle(-3, 3), dwell(0, 4);
  std::uniform_int_distribution<int> moves(0, 4);
  int hot = 0;
  for (int i = 0; i < 40; ++i) {
    Rig rig = detailed_owl();
    for (const Axis axis : kAxes) {
      Motor& m = rig.axis(axis).motor;
      for (Quantity* q : {&m.thermal_resistance_KpW, &m.thermal_time_s, &m.winding_to_housing_KpW,
                          &m.winding_time_s, &m.housing_to_mount_KpW, &m.phase_resistance_ohm})
        q->si = *q->si * std::pow(10, decades(random));
    }
    rig.on_tilt[1].mass_kg.si = 0.05 * std::pow(10, decades(random));
    for (int k = moves(random); k > 0; --k)
      rig.duty.push_back(duty_move(angle(random), angle(random) / 3, dwell(random)));
    const Analysis a = figures_of(rig);
    for (const Figure& figure : a.figures) {
      if (figure.id.find(".heat.") == std::string::npos) continue;
      EXPECT_NE(figure.value.has_value(), !figure.because.empty()) << i << ' ' << figure.id;
      EXPECT_TRUE(std::isfinite(figure.value.value_or(0))) << i << ' ' << figure.id;
    }
    for (const HeatCurve& curve : a.heat) {
      EXPECT_EQ(curve.time_s.size(), curve.winding_K.size());
      EXPECT_EQ(curve.time_s.size(), curve.mount_K.size());
      for (const double at_K : curve.winding_K) EXPECT_TRUE(std::isfinite(at_K)) << i;
    }
    for (const Finding& found : a.findings) {
      if (found.id.find(".heat.") == std::string::npos) continue;
      EXPECT_TRUE(found.demand || !found.because.empty()) << found.id;
      hot += found.verdict == Verdict::fails;
    }
  }
  EXPECT_GT(hot, 10);  // else the motors would be too cool to mean anything
}

}  // namespace
}  // namespace gazewright
