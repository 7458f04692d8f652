#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "core/analysis/analysis.h"
#include "core/analysis/say.h"
#include "core/rig/fields.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

/// A bracket that gives way, in the verdicts: the wanted time at the camera, its swing against the
/// loop, the advised gains.
namespace gazewright {
namespace {

using tests::finding;
using tests::owl;

Rig on_a_bracket(double stiffness_Nmprad) {
  Rig rig = owl();
  rig.pan.bracket.stiffness_Nmprad = si_quantity(stiffness_Nmprad);
  return rig;
}
Analysis figures_of(const Rig& rig) { return analyse(rig, {.remedies = false}); }

/// The axis itself is in time, its camera on the bracket is not.
Rig in_time_but_for_the_camera(double stiffness_Nmprad, double damping_ratio) {
  Rig rig = on_a_bracket(stiffness_Nmprad);
  rig.pan.bracket.damping_ratio = si_quantity(damping_ratio);
  const Analysis a = figures_of(rig);
  const double axis_s = *a.value("pan.step.settle_time");
  const double camera_s = *a.value("pan.picture.settle_time");
  EXPECT_GT(camera_s, 1.1 * axis_s);
  rig.task.within_s = si_quantity((axis_s + camera_s) / 2);
  return rig;
}

void apply(Rig& rig, const Remedy& remedy) {
  *find_quantity(rig, remedy.path) = si_quantity(remedy.value_si);
  for (const FieldValue& other : remedy.also)
    *find_quantity(rig, other.path) = si_quantity(other.value_si);
}

TEST(BracketChecks, TheWantedTimeIsJudgedAtTheCamera) {
  const Rig rig = in_time_but_for_the_camera(40, 0.05);
  const Analysis a = figures_of(rig);
  const Finding* time = finding(a, "pan.move.time");
  EXPECT_EQ(time->verdict, Verdict::fails);
  EXPECT_EQ(time->demand, a.value("pan.picture.settle_time"));
  EXPECT_TRUE(time->because.starts_with(
      "settles in " + say(*a.value("pan.step.settle_time"), "s", "ms") +
      ", the camera on its bracket in " + say(*a.value("pan.picture.settle_time"), "s", "ms")))
      << time->because;
  // Without the bracket, and on one that follows the output, the axis alone decides.
  Rig bare = rig, stiff = rig;
  bare.pan.bracket.stiffness_Nmprad = {};
  stiff.pan.bracket.stiffness_Nmprad = si_quantity(1e7);
  const Analysis without = figures_of(bare), with = figures_of(stiff);
  EXPECT_NE(finding(without, "pan.move.time")->verdict, Verdict::fails);
  EXPECT_EQ(finding(without, "pan.move.time")->demand, without.value("pan.step.settle_time"));
  EXPECT_NE(finding(with, "pan.move.time")->verdict, Verdict::fails);
  EXPECT_NEAR(*finding(with, "pan.move.time")->demand, *without.value("pan.step.settle_time"),
              tol(1e-4));
}

TEST(BracketChecks, EachRemedyBringsTheCameraToRestInTime) {
  // One whose ringing ends within the simulation, one that rings on beyond it.
  for (const Rig& rig :
       {in_time_but_for_the_camera(40, 0.05), in_time_but_for_the_camera(60, 0.02)}) {
    const Analysis a = analyse(rig);
    const Finding* time = finding(a, "pan.move.time");
    ASSERT_FALSE(time->remedies.empty());
    for (const Remedy& remedy : time->remedies) {
      Rig mended = rig;
      apply(mended, remedy);
      const Analysis then = figures_of(mended);
      EXPECT_NE(finding(then, "pan.move.time")->verdict, Verdict::fails) << remedy.text;
      EXPECT_LE(*then.value("pan.picture.settle_time"), *rig.task.within_s.si) << remedy.text;
    }
  }
}

TEST(BracketChecks, APlannedMoveThatIsInTimeIsNamedWhereTheStepIsNot) {
  Rig rig = on_a_bracket(40);
  rig.pan.bracket.damping_ratio = si_quantity(0.05);
  rig.pan.loop.speed_feed_forward = rig.pan.loop.acceleration_feed_forward = si_quantity(1);
  double best_s = kInfinity;
  ProfileKind best = ProfileKind::step;
  const Analysis before = figures_of(rig);
  for (const ProfileRun& run : before.profiles[0].runs) {
    if (run.kind == ProfileKind::step || run.camera_s.value_or(kInfinity) >= best_s) continue;
    best_s = *run.camera_s, best = run.kind;
  }
  const double step_s = *before.value("pan.picture.settle_time");
  const auto because = [&](double within_s) {
    rig.task.within_s = si_quantity(within_s);
    return finding(figures_of(rig), "pan.move.time")->because;
  };
  const std::string along =
      "; along the " + std::string(word_of(best)) + " move in " + say(best_s, "s", "ms");
  ASSERT_LT(best_s, 0.9 * step_s);
  EXPECT_TRUE(because((best_s + step_s) / 2).ends_with(along));
  for (const double within_s : {0.9 * best_s, 1.1 * step_s})
    EXPECT_EQ(because(within_s).find("; along"), std::string::npos) << "none is, or the step is";
}

TEST(BracketChecks, ACameraThatSwingsOnFailsWithoutANumber) {
  Rig rig = on_a_bracket(20);
  rig.pan.bracket.damping_ratio = si_quantity(0);
  const Analysis a = figures_of(rig);
  const Finding* time = finding(a, "pan.move.time");
  EXPECT_EQ(time->verdict, Verdict::fails);
  EXPECT_FALSE(time->demand);
  EXPECT_NE(time->because.find("but the camera swings on its bracket for longer than 30 s"),
            std::string::npos)
      << time->because;
  EXPECT_EQ(a.figure("pan.picture.settle_time")->because,
            "the camera swings on its bracket for longer than 30 s");
}

TEST(BracketChecks, TheCamerasCourseLeavesTheBandWhereTheFigureSays) {
  const Analysis a = figures_of(on_a_bracket(200));
  const AxisCurves& curves = a.of(Axis::pan);
  ASSERT_EQ(curves.camera_rad.size(), curves.step.time_s.size());
  double last_s = 0;
  for (std::size_t i = 0; i < curves.camera_rad.size(); ++i)
    if (std::abs(curves.camera_rad[i] - curves.move_rad) > curves.band_rad)
      last_s = curves.step.time_s[i];
  const double still_s = *a.value("pan.picture.settle_time");
  EXPECT_GE(still_s, last_s);
  EXPECT_LE(still_s, last_s + curves.step.sample_time_s);
  EXPECT_TRUE(figures_of(owl()).of(Axis::pan).camera_rad.empty());
}

TEST(BracketChecks, TheSwingIsToStayThreeTimesAboveTheLoop) {
  EXPECT_EQ(finding(figures_of(owl()), "pan.loop.bracket"), nullptr) << "no bracket is entered";
  const Analysis a = figures_of(owl());
  const double crossover = *a.value("pan.loop.crossover"), J = *a.value("pan.inertia.load");
  const struct {
    double part;
    Verdict verdict;
  } cases[] = {{0.99, Verdict::fails}, {1.01, Verdict::tight}, {1.2, Verdict::holds}};
  for (const auto& [part, verdict] : cases) {
    const double mode = 3 * crossover * part;  // √(k/J), by hand
    const Analysis on = figures_of(on_a_bracket(J * mode * mode));
    const Finding* swing = finding(on, "pan.loop.bracket");
    ASSERT_NE(swing, nullptr);
    EXPECT_EQ(swing->verdict, verdict) << part;
    EXPECT_NEAR(*swing->demand, 3 * crossover, tol(1e-9));
    EXPECT_NEAR(*swing->capacity, mode, tol(1e-9));
    EXPECT_EQ(finding(on, "tilt.loop.bracket"), nullptr);
  }
}

TEST(BracketChecks, EachRemedyKeepsTheSwingAboveTheLoop) {
  const Rig rig = on_a_bracket(20);
  const Analysis a = analyse(rig);
  const Finding* swing = finding(a, "pan.loop.bracket");
  ASSERT_EQ(swing->verdict, Verdict::fails);
  bool stiffens = false, calms = false;
  for (const Remedy& remedy : swing->remedies) {
    Rig mended = rig;
    apply(mended, remedy);
    EXPECT_NE(finding(figures_of(mended), "pan.loop.bracket")->verdict, Verdict::fails)
        << remedy.text;
    stiffens = stiffens || remedy.path == "pan.bracket.stiffness";
    calms = calms || remedy.path == "pan.loop.speed_gain";
  }
  EXPECT_TRUE(stiffens && calms);
}

TEST(BracketChecks, ALoopWithoutCrossoverEitherLeavesTheBracketAloneOrFails) {
  Rig rig = on_a_bracket(20);
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(1e6);
  EXPECT_EQ(finding(figures_of(rig), "pan.loop.bracket")->verdict, Verdict::fails);
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(1e-9);
  rig.pan.loop.speed_integral_gain_Nmprad = si_quantity(0);
  EXPECT_EQ(finding(figures_of(rig), "pan.loop.bracket")->verdict, Verdict::holds);
}

TEST(BracketChecks, AdvisedGainsStayBelowAThirdOfTheSwing) {
  const Analysis bare = figures_of(owl()), soft = figures_of(on_a_bracket(20)),
                 stiff = figures_of(on_a_bracket(1e7));
  EXPECT_LE(3 * *soft.value("pan.advice.crossover"), *soft.value("pan.bracket.mode"));
  EXPECT_GT(3.1 * *soft.value("pan.advice.crossover"), *soft.value("pan.bracket.mode"));
  EXPECT_EQ(soft.advice[0].limited_by, "the bracket");
  EXPECT_EQ(stiff.value("pan.advice.speed_gain"), bare.value("pan.advice.speed_gain"));
  EXPECT_EQ(stiff.advice[0].limited_by, bare.advice[0].limited_by);
}

TEST(BracketChecks, TheMoveEndsAtTheCameraOnlyWhereItStandsOnABracket) {
  EXPECT_EQ(settle_id(figures_of(on_a_bracket(40)), Axis::pan), "pan.picture.settle_time");
  EXPECT_EQ(settle_id(figures_of(on_a_bracket(40)), Axis::tilt), "tilt.step.settle_time");
  EXPECT_EQ(settle_id(figures_of(Rig{}), Axis::pan), "pan.step.settle_time");
}

TEST(BracketChecks, ADragSeesTheSameVerdicts) {
  const Rig rig = in_time_but_for_the_camera(40, 0.05);
  const Analysis quick = analyse(rig, {.remedies = false, .quick = true}), full = figures_of(rig);
  for (const char* id : {"pan.move.time", "pan.loop.bracket"}) {
    EXPECT_EQ(finding(quick, id)->verdict, finding(full, id)->verdict) << id;
    EXPECT_EQ(finding(quick, id)->demand, finding(full, id)->demand) << id;
  }
}

}  // namespace
}  // namespace gazewright
