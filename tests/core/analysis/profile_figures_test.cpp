#include <gtest/gtest.h>

#include <cmath>

#include "core/analysis/analysis.h"
#include "core/analysis/context.h"
#include "core/rig/fields.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::owl;

Analysis figures_of(const Rig& rig) { return analyse(rig, {.remedies = false}); }

std::string id_of(ProfileKind kind, const char* key) {
  return "pan.profile." + std::string(name_of(kind)) + '.' + key;
}

Rig on_a_bracket(double stiffness_Nmprad) {
  Rig rig = owl();
  rig.pan.bracket.stiffness_Nmprad = si_quantity(stiffness_Nmprad);
  return rig;
}

TEST(ProfileFigures, OfTheStepAreTheStepsOwn) {
  const Analysis a = figures_of(owl());
  for (const char* key : {"settle_time", "overshoot", "peak_current"})
    EXPECT_EQ(a.value(id_of(ProfileKind::step, key)), a.value(std::string("pan.step.") + key))
        << key;
  EXPECT_EQ(a.value("pan.profile.step.planned_time"), 0);
  EXPECT_NEAR(*a.value("pan.profile.minimum_time.planned_time"), *a.value("pan.move.shortest_time"),
              tol(1e-12));
}

TEST(ProfileFigures, ThePictureIsUsableAfterExposureAndDelay) {
  const Analysis a = figures_of(owl());
  EXPECT_NEAR(*a.value("pan.picture.usable_time"), *a.value("pan.step.settle_time") + 0.006 + 0.045,
              tol(1e-12));
  EXPECT_EQ(a.value("pan.picture.usable_time"), a.value("pan.profile.step.usable_time"));
}

TEST(ProfileFigures, ABracketSwingsAtItsModeAndDelaysThePicture) {
  EXPECT_TRUE(figures_of(owl()).figure("pan.bracket.mode")->is_aside);
  const Analysis soft = figures_of(on_a_bracket(20)), stiff = figures_of(on_a_bracket(1e7));
  EXPECT_NEAR(*soft.value("pan.bracket.mode"), std::sqrt(20 / *soft.value("pan.inertia.load")),
              tol(1e-9));
  EXPECT_GT(*soft.value("pan.profile.step.ringing_px"),
            10 * *stiff.value("pan.profile.step.ringing_px"));
  EXPECT_GT(*soft.value("pan.picture.usable_time"), *stiff.value("pan.picture.usable_time") + 0.02);
  // The stiff one follows the output: α/ω² at 1e5 rad/s is below 1e-6 of the band.
  EXPECT_NEAR(*stiff.value("pan.picture.usable_time"),
              *figures_of(owl()).value("pan.picture.usable_time"), tol(1e-4));
}

TEST(ProfileFigures, AreLeftOutWhileDraggingAndSaySo) {
  const Analysis quick = analyse(owl(), {.quick = true});
  const Analysis full = figures_of(owl());
  ASSERT_EQ(quick.figures.size(), full.figures.size());
  EXPECT_TRUE(quick.profiles[0].runs.empty());
  EXPECT_EQ(full.profiles[0].runs.size(), kProfiles.size());
  std::size_t left_out = 0;
  for (std::size_t i = 0; i < quick.figures.size(); ++i) {
    const Figure& figure = quick.figures[i];
    const auto& wanted = full.figures[i].value;
    const bool is_left_out = figure.because == "worked out when nothing is dragged";
    if (is_left_out) {
      EXPECT_TRUE(figure.is_aside && !figure.value) << figure.id;
      ++left_out;
    } else if (figure.value && wanted) {
      EXPECT_NEAR(*figure.value, *wanted, tol(1e-12) * std::abs(*wanted)) << figure.id;
    } else {
      EXPECT_EQ(figure.value, wanted) << figure.id << ": " << figure.because;
    }
    if (figure.id.find(".profile.") != std::string::npos) {
      EXPECT_FALSE(figure.value) << figure.id;
    }
  }
  EXPECT_LT(left_out, quick.figures.size() / 3);
}

TEST(ProfileFigures, FeedForwardMakesPlannedMovesSettleWithTheirPlanAndLeavesTheStep) {
  Rig rig = owl();
  const Analysis without = figures_of(rig);
  rig.pan.loop.speed_feed_forward = rig.pan.loop.acceleration_feed_forward = si_quantity(1);
  const Analysis with = figures_of(rig);
  EXPECT_EQ(with.value("pan.step.settle_time"), without.value("pan.step.settle_time"));
  for (const ProfileKind kind : {ProfileKind::jerk_limited, ProfileKind::minimum_jerk}) {
    EXPECT_LT(*with.value(id_of(kind, "settle_time")),
              *without.value(id_of(kind, "settle_time")) - 0.02);
    EXPECT_LT(*with.value(id_of(kind, "peak_current")), *with.value("pan.step.peak_current"));
  }
  EXPECT_NE(without.profiles[0].advice.find("without speed feed-forward"), std::string::npos);
  EXPECT_EQ(with.profiles[0].advice.find("without speed feed-forward"), std::string::npos);
}

TEST(ProfileFigures, TheBestIsTheOneWhosePictureComesFirst) {
  Rig rig = on_a_bracket(40);
  rig.pan.loop.speed_feed_forward = rig.pan.loop.acceleration_feed_forward = si_quantity(1);
  const Analysis a = figures_of(rig);
  ASSERT_TRUE(a.profiles[0].best);
  const double best = *a.value(id_of(*a.profiles[0].best, "usable_time"));
  for (const ProfileKind kind : kProfiles)
    EXPECT_LE(best, a.value(id_of(kind, "usable_time")).value_or(kInfinity)) << name_of(kind);
  EXPECT_TRUE(a.profiles[0].advice.starts_with(word_of(*a.profiles[0].best)));
}

TEST(ProfileFigures, SayWhyAMoveIsNotSimulated) {
  Rig rig = owl();
  rig.pan.loop.acceleration_limit_radps2 = si_quantity(1e-9);
  const Analysis slow = figures_of(rig);
  const Figure* figure = slow.figure("pan.profile.trapezoid.settle_time");
  EXPECT_FALSE(figure->value);
  EXPECT_NE(figure->because.find("is not simulated"), std::string::npos) << figure->because;
  rig = owl();
  rig.pan.friction.coulomb_Nm = si_quantity(100);
  const Analysis stuck = figures_of(rig);
  for (const ProfileKind kind : {ProfileKind::trapezoid, ProfileKind::minimum_time}) {
    const Figure* none = stuck.figure(id_of(kind, "planned_time"));
    EXPECT_TRUE(none->because.starts_with("cannot make the move")) << none->because;
  }
  EXPECT_TRUE(stuck.profiles[0].advice.starts_with("no profile settles"));
}

const Finding* slow_finding(const Analysis& a) {
  for (const Finding& finding : a.findings)
    if (finding.id == "pan.smooth.ripple") return &finding;
  return nullptr;
}

TEST(SmoothFigures, AskOnlyWhereDetailsAreEntered) {
  const Analysis a = figures_of(owl());
  EXPECT_TRUE(a.value("pan.smooth.lowest_speed"));
  EXPECT_EQ(a.value("pan.smooth.lowest_speed"), a.value("pan.smooth.lowest_speed_encoder"));
  for (const char* key : {"lowest_speed_friction", "lowest_speed_cogging", "worst_ripple_px"})
    EXPECT_TRUE(a.figure(std::string("pan.smooth.") + key)->is_aside) << key;
  EXPECT_EQ(slow_finding(a), nullptr);
}

TEST(SmoothFigures, ACoggingTorqueNeedsItsPeriods) {
  Rig rig = owl();
  rig.pan.motor.cogging_torque_Nm = si_quantity(0.02);
  const Analysis without = figures_of(rig);
  EXPECT_EQ(without.figure("pan.smooth.lowest_speed")->because, "needs pan.motor.cogging_per_turn");
  ASSERT_NE(slow_finding(without), nullptr);
  EXPECT_EQ(slow_finding(without)->verdict, Verdict::unknown);
  rig.pan.motor.cogging_per_turn = si_quantity(84);
  const Analysis with = figures_of(rig);
  EXPECT_NEAR(*with.value("pan.smooth.cogging_frequency"),
              84 * 18 * *with.value("pan.smooth.lowest_speed"), tol(1e-9));
  EXPECT_GE(*with.value("pan.smooth.worst_ripple_px") * (1 + 1e-9), *slow_finding(with)->demand);
}

TEST(SmoothFigures, MuchCoggingFailsAndMoreGainMendsIt) {
  Rig rig = owl();
  rig.pan.motor.cogging_torque_Nm = si_quantity(0.05);
  rig.pan.motor.cogging_per_turn = si_quantity(36);
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(0.4);
  rig.pan.loop.position_gain_1ps = si_quantity(10);
  const Analysis a = analyse(rig);
  const Finding* finding = slow_finding(a);
  ASSERT_NE(finding, nullptr);
  ASSERT_EQ(finding->verdict, Verdict::fails) << *finding->demand;
  ASSERT_FALSE(finding->remedies.empty());
  find_quantity(rig, finding->remedies.front().path)->si = finding->remedies.front().value_si;
  EXPECT_NE(slow_finding(figures_of(rig))->verdict, Verdict::fails);
}

TEST(SmoothFigures, OfLoopsThatSwingSaySo) {
  Rig rig = owl();
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(300);
  rig.pan.friction.breakaway_Nm = si_quantity(0.08);
  const Analysis a = figures_of(rig);
  EXPECT_TRUE(a.figure("pan.smooth.lowest_speed")->because.starts_with("the loops swing"));
  EXPECT_EQ(slow_finding(a)->verdict, Verdict::fails);
}

}  // namespace
}  // namespace gazewright
