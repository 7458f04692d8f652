#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/analysis/analysis.h"
#include "core/rig/fields.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright::tests {
namespace {

using tests::Random;

Rig with(Rig rig, std::string_view path, double value_si) {
  find_quantity(rig, path)->si = value_si;
  return rig;
}

std::string id(Axis axis, std::string_view rest) {
  return std::string(name_of(axis)) + ".limits." + std::string(rest);
}

/// Of all the figures of a step's (or with the prefix "shortest_" of a shortest move's) limits.
double sum(const Analysis& analysis, Axis axis, const std::string& prefix, std::size_t count) {
  double sum = 0;
  for (std::size_t i = 0; i < count; ++i) {
    const std::string name(name_of(static_cast<MoveLimit>(i)));
    sum += analysis.value(id(axis, prefix + name)).value_or(NAN);
  }
  return sum;
}

const LimitGain* gain_of(const MoveLimits& limits, std::string_view path) {
  for (const LimitGain& gain : limits.gains)
    if (gain.path == path) return &gain;
  return nullptr;
}

TEST(MoveLimits, FiguresAddUpToOne) {
  const Analysis analysis = analyse(owl(), {.remedies = false});
  for (const Axis axis : kAxes) {
    EXPECT_NEAR(sum(analysis, axis, "", kMoveLimits), 1, tol(1e-12));
    EXPECT_NEAR(sum(analysis, axis, "shortest_", 5), 1, tol(1e-9));
    EXPECT_TRUE(analysis.limits_of(axis).sentence.starts_with("of the ")) << name_of(axis);
    EXPECT_TRUE(analysis.limits_of(axis).gains.empty()) << "a drag must not wait for them";
  }
}

TEST(MoveLimits, SayWhetherDriveOrMotorLimitsTheCurrent) {
  const Rig strong =
      with(with(owl(), "supply.current_limit", kInfinity), "pan.drive.current_limit", 8);
  const Analysis drive = analyse(strong, {.remedies = false});
  const Analysis motor =
      analyse(with(with(strong, "pan.motor.peak_current", 8), "pan.drive.current_limit", 60),
              {.remedies = false});
  EXPECT_GT(drive.value("pan.limits.current").value(), 0.05);
  EXPECT_EQ(drive.value("pan.limits.motor_current"), 0);
  EXPECT_EQ(motor.value("pan.limits.current"), 0);
  EXPECT_EQ(motor.value("pan.limits.motor_current"), drive.value("pan.limits.current"));
}

// A gain is what the whole analysis of the changed rig finds, to the rounding of two settle times.
TEST(MoveLimits, AGainIsTheTimeThatTheChangedRigSaves) {
  int gains = 0;
  for (const double supply_A : {4.0, 15.0}) {
    const Rig rig = with(owl(), "supply.current_limit", supply_A);
    const Analysis now = analyse(rig);
    for (const Axis axis : kAxes) {
      const std::string settle = std::string(name_of(axis)) + ".step.settle_time";
      double last = kInfinity;
      for (const LimitGain& gain : now.limits_of(axis).gains) {
        ++gains;
        const Analysis after = analyse(with(rig, gain.path, gain.value_si), {.remedies = false});
        EXPECT_NEAR(*now.value(settle) - after.value(settle).value(), gain.saved_s, tol(1e-12))
            << gain.text();
        EXPECT_GT(gain.saved_s, 0.01 * *now.value(settle));
        EXPECT_EQ(gain.share, now.value(id(axis, name_of(gain.limit))));
        EXPECT_LE(gain.saved_s, last);
        last = gain.saved_s;
      }
    }
  }
  EXPECT_GE(gains, 4);
}

/// Whether the finding of this id fails in `then` and does not in `now`, or clearly less.
bool fails_more(const Finding& then, const Analysis& now) {
  if (then.verdict != Verdict::fails || then.id == "gearboxes.swap") return false;
  const Finding* before = finding(now, then.id);
  if (before == nullptr || before->verdict != Verdict::fails) return true;
  return before->margin && then.margin && *then.margin < *before->margin - 0.05;
}

// What the whole analysis of the changed rig finds failing is what the line warns of.
TEST(MoveLimits, AGainSaysWhatFailsOnceItIsTaken) {
  int warned = 0, harmless = 0;
  for (const double factor : {1.0, 1.6, 2.2}) {
    Rig rig = owl();
    for (const Axis axis : kAxes) {
      Quantity& gain = rig.axis(axis).loop.speed_gain_Nmsprad;
      gain = si_quantity(*gain.si * factor);
    }
    const Analysis now = analyse(rig);
    for (const Axis axis : kAxes) {
      for (const LimitGain& gain : now.limits_of(axis).gains) {
        const Analysis after = analyse(with(rig, gain.path, gain.value_si), {.remedies = false});
        const auto worst = std::ranges::find_if(
            after.findings, [&](const Finding& f) { return fails_more(f, now); });
        const auto at = gain.change.find(", but then this fails: ");
        EXPECT_EQ(at != std::string::npos, worst != after.findings.end()) << gain.change;
        if (worst == after.findings.end()) {
          ++harmless;
          continue;
        }
        ++warned;
        EXPECT_NE(gain.change.find(worst->what, at), std::string::npos) << gain.change;
      }
    }
  }
  EXPECT_GE(warned, 1);
  EXPECT_GE(harmless, 1);
}

TEST(MoveLimits, AWeakSupplyIsToBeRaisedByAQuarterInASentence) {
  const Analysis analysis =
      analyse(with(with(owl(), "supply.current_limit", 2), "pan.loop.position_gain", 60));
  const MoveLimits& pan = analysis.limits_of(Axis::pan);
  const LimitGain* gain = gain_of(pan, "supply.current_limit");
  ASSERT_NE(gain, nullptr) << pan.sentence;
  EXPECT_DOUBLE_EQ(gain->value_si, 2.5);
  EXPECT_NE(gain->text().find("of the time the supply's current limit holds it back: another "
                              "supply, or another setting of it (current limit 2.5 A) would save "),
            std::string::npos)
      << gain->text();
}

// Of a quarter more than 4 A the motor's peak, 4.4 A, leaves nothing to gain beyond it.
TEST(MoveLimits, ALimitIsRaisedNoFurtherThanItIsEverMet) {
  Rig rig = with(with(owl(), "pan.drive.current_limit", 4), "pan.motor.peak_current", 4.4);
  rig = with(with(rig, "supply.current_limit", kInfinity), "pan.loop.position_gain", 60);
  const Analysis analysis = analyse(rig);
  const MoveLimits& pan = analysis.limits_of(Axis::pan);
  const LimitGain* gain = gain_of(pan, "pan.drive.current_limit");
  ASSERT_NE(gain, nullptr) << pan.sentence;
  // Bisection to 1/32 of the logarithm of a quarter, 0.03 A, then up to two digits.
  EXPECT_GE(gain->value_si, 4.4 - 1e-12);
  EXPECT_LE(gain->value_si, 4.5 + 1e-12);
}

TEST(MoveLimits, TheSpeedLimitIsNotRaisedPastTheDrives) {
  Rig rig = with(owl(), "pan.loop.speed_limit", 3);
  const Analysis open = analyse(rig);
  ASSERT_NE(gain_of(open.limits_of(Axis::pan), "pan.loop.speed_limit"), nullptr)
      << open.limits_of(Axis::pan).sentence;
  rig = with(rig, "pan.drive.speed_limit", 3);
  EXPECT_EQ(gain_of(analyse(rig).limits_of(Axis::pan), "pan.loop.speed_limit"), nullptr);
}

TEST(MoveLimits, AreUnknownWithAReasonWhereTheStepNeverSettlesOrInputsAreMissing) {
  const Analysis hunting = analyse(with(owl(), "tilt.gearbox.backlash", 0.05));
  const Figure* gap = hunting.figure("tilt.limits.gap");
  ASSERT_FALSE(gap->value);
  EXPECT_EQ(hunting.limits_of(Axis::tilt).sentence, "never settles: " + gap->because);
  EXPECT_TRUE(hunting.limits_of(Axis::tilt).gains.empty());
  EXPECT_FALSE(hunting.limits_of(Axis::tilt).step.empty()) << "the plot still shows them";
  Rig rig = owl();
  rig.pan.motor.rotor_inertia_kgm2 = {};
  const Analysis missing = analyse(rig);
  EXPECT_EQ(missing.limits_of(Axis::pan).sentence, "needs pan.motor.rotor_inertia");
  EXPECT_EQ(missing.figure("pan.limits.loop")->because, "needs pan.motor.rotor_inertia");
  EXPECT_TRUE(missing.limits_of(Axis::pan).step.empty());
}

TEST(MoveLimits, OfOddRigsAreSharesOrReasonsAndEnd) {
  Random random(33);
  for (int i = 0; i < 5; ++i) {
    Rig rig = owl();
    for (const Axis axis : kAxes) {
      AxisParts& parts = rig.axis(axis);
      parts.gearbox.ratio = si_quantity(random.chance(0.5) ? 0.01 : 1000);
      parts.gearbox.stiffness_Nmprad = si_quantity(random.log_uniform(1e-3, 1e6));
      parts.loop.speed_gain_Nmsprad = si_quantity(random.log_uniform(1e-3, 1e3));
      parts.drive.control_rate_Hz = si_quantity(random.log_uniform(50, 2e4));
    }
    const Analysis analysis = analyse(rig);
    for (const Axis axis : kAxes) {
      EXPECT_FALSE(analysis.limits_of(axis).sentence.empty());
      if (analysis.value(id(axis, "loop")))
        EXPECT_NEAR(sum(analysis, axis, "", kMoveLimits), 1, tol(1e-12)) << i;
      else
        EXPECT_FALSE(analysis.figure(id(axis, "loop"))->because.empty());
    }
  }
}

}  // namespace
}  // namespace gazewright::tests
