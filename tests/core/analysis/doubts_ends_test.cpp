// Doubts at the ends of the ranges: no figure there, the band of the step, and what sentences say.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/analysis/doubt_runs.h"
#include "core/analysis/doubt_words.h"
#include "core/analysis/doubts.h"
#include "core/rig/fields.h"
#include "tests/core/analysis/doubts_support.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using namespace tests;

TEST(Doubts, StayInsideWhatAFieldAllows) {
  Rig rig = owl();
  state_spread(rig, "pan.gearbox.efficiency", 0.5);  // 0.9, at most 1
  state_spread(rig, "pan.friction.coulomb", 3);      // 0 or more
  state_spread(rig, "pan.motor.rotor_inertia", 1);   // above 0
  for (const FoundUnknown& found : unknowns_of(rig)) {
    const FieldInfo& info = *find_info(found.at);
    EXPECT_EQ(range_problem(info, found.low), "") << found.at;
    EXPECT_EQ(range_problem(info, found.high), "") << found.at;
    EXPECT_LT(found.low, found.high) << found.at;
  }
}

TEST(Doubts, AnEndWithoutTheFigureSaysWhyAndHasAllOfTheDoubt) {
  // Friction may be more than the motor can overcome: the axis then does not move.
  Rig rig = owl_without_loops();
  rig.pan.friction.coulomb_Nm.spread_si = 50;
  state_spread(rig, "pan.motor.rotor_inertia", 0.1);
  const Doubts all = doubts(rig);
  const DoubtedFigure* time = all.figure("pan.move.shortest_time");
  ASSERT_NE(time, nullptr);
  EXPECT_FALSE(time->is_known_whole);
  const Shift& first = time->shifts.front();
  EXPECT_EQ(all.unknowns[first.unknown].path, "pan.friction.coulomb");
  EXPECT_TRUE(first.low.has_value());
  EXPECT_FALSE(first.high.has_value());
  EXPECT_NE(first.because, "");
  EXPECT_EQ(first.share, 1);
  const Shift* rotor = shift_by(all, *time, "pan.motor.rotor_inertia");
  ASSERT_NE(rotor, nullptr);
  EXPECT_EQ(rotor->share, 0);
  // What is known of it still counts: no less than what the end that is there and the rotor say.
  const double low = *first.low - time->value, of_rotor = *rotor->low - time->value;
  EXPECT_GE(time->uncertainty_si, 2 / std::sqrt(3) * std::hypot(low, of_rotor) * 0.9);
  ASSERT_FALSE(all.worth.empty());
  EXPECT_EQ(all.unknowns[all.worth[0].unknown].path, "pan.friction.coulomb");
  EXPECT_NE(all.worth[0].text.find("would tell whether pan's"), std::string::npos)
      << all.worth[0].text;
}

TEST(Doubts, AChangeTheSameWayAtBothEndsDoesNotCancel) {
  // A body's place on the far side of the axis: inertia grows with its square either way.
  Rig rig = owl_without_loops();
  rig.on_tilt[1].centre_m[0] = si_quantity(0);
  rig.on_tilt[1].centre_m[2] = si_quantity(0);
  rig.on_tilt[1].centre_m[0].spread_si = 0.02;
  const Doubts all = doubts(rig);
  const DoubtedFigure* time = all.figure("tilt.move.shortest_time");
  ASSERT_NE(time, nullptr);
  const Shift* shift = shift_by(all, *time, "on_tilt[camera].centre[0]");
  ASSERT_NE(shift, nullptr);
  EXPECT_GT(*shift->low, time->value);
  EXPECT_GT(*shift->high, time->value);
  EXPECT_GE(time->uncertainty_si,
            2 / std::sqrt(3) * (std::min(*shift->low, *shift->high) - time->value));
}

TEST(Doubts, TheStepsBandIsWhatBothEndsChange) {
  Rig rig = owl();
  for (const Axis axis : kAxes) {  // so that nothing else is in doubt
    rig.axis(axis).friction.stribeck_speed_radps = si_quantity(0.01);
    rig.axis(axis).bracket.damping_ratio = si_quantity(0.02);
  }
  state_spread(rig, "pan.motor.rotor_inertia", 0.1);
  const Analysis now = quick(rig);
  const Doubts all = doubts_of(rig, now);
  ASSERT_EQ(all.unknowns.size(), 1u);
  Rig less = rig, more = rig;
  *less.pan.motor.rotor_inertia_kgm2.si *= 0.9;
  *more.pan.motor.rotor_inertia_kgm2.si *= 1.1;
  const auto angle = [](const Analysis& a, std::size_t i) {
    const auto& angles = a.of(Axis::pan).step.angle_rad;
    return angles[std::min(i, angles.size() - 1)];
  };
  const Analysis low = quick(less), high = quick(more);
  const StepBand& band = all.step[0];
  ASSERT_EQ(band.time_s.size(), now.of(Axis::pan).step.time_s.size());
  double widest = 0;
  for (std::size_t i = 0; i < band.time_s.size(); ++i) {
    const double here = angle(now, i), a = angle(low, i) - here, b = angle(high, i) - here;
    const double wide = 2 * std::sqrt((a * a + b * b) / 2 / 3);
    EXPECT_NEAR(band.high_rad[i] - here, wide, tol(1e-12)) << i;
    EXPECT_NEAR(here - band.low_rad[i], wide, tol(1e-12)) << i;
    widest = std::max(widest, wide);
  }
  EXPECT_GT(widest, 1e-4);
  EXPECT_EQ(band.low_rad.front(), band.high_rad.front());
}

TEST(Doubts, HaveNoBandWhereAnEndRunsAway) {
  Rig rig = owl();
  rig.pan.motor.rotor_inertia_kgm2.spread_si = 0.99 * *rig.pan.motor.rotor_inertia_kgm2.si;
  rig.pan.loop.speed_gain_Nmsprad.si = 40;
  const auto runs = run_doubts(rig, unknowns_of(rig), 1, {});
  ASSERT_TRUE(runs);
  const bool any =
      std::ranges::any_of(runs->low, [](const Outcome& o) { return o.runs_away[0]; }) ||
      std::ranges::any_of(runs->high, [](const Outcome& o) { return o.runs_away[0]; });
  const Doubts all = doubts(rig);
  EXPECT_EQ(all.step[0].time_s.empty(), any || runs->nominal.runs_away[0]);
}

TEST(DoubtWords, SayWhatMeasuringWouldTakeOff) {
  const FigureInfo info{.id = "<axis>.step.settle_time",
                        .label = "The settle time",
                        .si_unit = "s",
                        .unit = "ms",
                        .formula = {},
                        .source = {},
                        .inputs = {}};
  const DoubtedFigure figure{"tilt.step.settle_time", 0.1, 0.012, true, {}};
  Shift shift{0, 0.09, 0.11, "", 0.64};  // 12 ms·(1 − √0.36) = 4.8 ms
  EXPECT_EQ(say_worth("weighing the camera", figure, shift, info),
            "weighing the camera would take 4.8 ms of the ±12 ms off tilt's settle time");
  shift.share = 1;
  EXPECT_EQ(say_worth("measuring the rotor inertia of the pan motor", figure, shift, info),
            "measuring the rotor inertia of the pan motor would take all of the ±12 ms off tilt's "
            "settle time");
  shift.high.reset();
  shift.because = "never settles";
  EXPECT_EQ(say_worth("weighing the camera", figure, shift, info),
            "weighing the camera would tell whether tilt's settle time holds: at the upper end of "
            "its range there is none (never settles)");
}

}  // namespace
}  // namespace gazewright
