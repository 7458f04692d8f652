#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/analysis/analysis.h"
#include "core/pointing/uncertainty.h"
#include "core/rig/fields.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

/// The pointing budget of whole rigs.
namespace gazewright {
namespace {

using tests::finding;
using tests::owl;
constexpr double kDegree = std::numbers::pi / 180;

Analysis plain(const Rig& rig) { return analyse(rig, {.remedies = false}); }
const PointingBudget& budget_of(const Analysis& a, Axis axis) {
  return a.pointing[static_cast<std::size_t>(axis)];
}
const PointingTerm* term(const Analysis& a, Axis axis, std::string_view id) {
  const auto& terms = budget_of(a, axis).terms;
  const auto at = std::ranges::find(terms, id, &PointingTerm::id);
  return at == terms.end() ? nullptr : &*at;
}
bool names(const Analysis& a, Axis axis, const std::string& sentence) {
  const auto& missing = budget_of(a, axis).missing;
  return std::ranges::find(missing, sentence) != missing.end();
}

/// Everything that can make it point amiss, entered.
Rig owl_with_everything() {
  Rig rig = owl();
  for (AxisParts* parts : {&rig.pan, &rig.tilt}) {
    parts->bracket.stiffness_Nmprad = si_quantity(150);
    parts->bearing.radial_play_m = si_quantity(10e-6);
    parts->bearing.spacing_m = si_quantity(40e-3);
    parts->motor.cogging_torque_Nm = si_quantity(1e-3);
    parts->motor.cogging_per_turn = si_quantity(84);
    parts->friction.breakaway_Nm = si_quantity(0.06);
  }
  rig.stand.lean_rad = si_quantity(2 * kDegree);
  rig.pointing.mount_error_rad = si_quantity(0.5 * kDegree);
  rig.pointing.calibration_error_rad = si_quantity(0.1 * kDegree);
  rig.pointing.vision_noise_px = si_quantity(0.8);
  return rig;
}

TEST(PointingBudget, OfThePlainOwlIsGapEncoderAndWindup) {
  const Analysis a = plain(owl());
  for (const Axis axis : kAxes) {
    const std::string name = name_of(axis);
    const AxisParts& parts = axis == Axis::pan ? owl().pan : owl().tilt;
    const double ratio = parts.gearbox.ratio.value();
    // 14 bits: half a count is 180°/2¹⁴.
    const double gap = parts.gearbox.backlash_rad.value() / 2;
    const double encoder = (0.5 + 180.0 / 16384) * kDegree / ratio;
    const double windup =
        a.value(name + ".gravity.torque_max").value() / parts.gearbox.stiffness_Nmprad.value();
    EXPECT_NEAR(a.value(name + ".pointing.backlash").value(), gap, tol(1e-15));
    EXPECT_NEAR(a.value(name + ".pointing.encoder").value(), encoder, tol(1e-15));
    EXPECT_NEAR(a.value(name + ".pointing.windup").value(), windup, tol(1e-15));
    EXPECT_NEAR(a.value(name + ".pointing.worst").value(), gap + encoder + windup, tol(1e-15));
    const double rss = std::sqrt(gap * gap + encoder * encoder + windup * windup);
    EXPECT_NEAR(a.value(name + ".pointing.rss").value(), rss, tol(1e-15));
    EXPECT_NEAR(a.value(name + ".pointing.rss_px").value(), rss * 640 / std::tan(31 * kDegree),
                tol(1e-11));
    EXPECT_NEAR(a.value(name + ".pointing.rss_at_target").value(), rss * 2.5, tol(1e-14));
    EXPECT_EQ(budget_of(a, axis).terms.size(), 3u);
    EXPECT_EQ(budget_of(a, axis).rss_rad, a.value(name + ".pointing.rss").value());
  }
  EXPECT_GT(a.value("tilt.pointing.windup").value(), 1e-6);
}

TEST(PointingBudget, NamesWhatIsLeftOutAndWhy) {
  const Analysis a = plain(owl());
  for (const char* sentence :
       {"Friction: needs pan.friction.breakaway", "Bracket: needs pan.bracket.stiffness",
        "Bearing play: needs pan.bearing.radial_play, pan.bearing.spacing",
        "Cogging: no cogging torque is entered", "Mounting: needs pointing.mount_error",
        "Calibration: needs pointing.calibration_error",
        "Vision noise: needs pointing.vision_noise",
        "Droop of the loop: the speed loop's integral takes it away"})
    EXPECT_TRUE(names(a, Axis::pan, sentence)) << sentence;
  EXPECT_TRUE(a.figure("pan.pointing.flex")->is_aside);
  EXPECT_FALSE(a.value("pan.pointing.bearing"));
}

TEST(PointingBudget, WithoutAnInputOfTheGearIsUnknownNotZero) {
  Rig rig = owl();
  rig.pan.encoder.error_rad = {};
  const Analysis a = plain(rig);
  EXPECT_FALSE(a.value("pan.pointing.rss"));
  EXPECT_EQ(a.figure("pan.pointing.rss")->because, "needs pan.encoder.error");
  EXPECT_TRUE(budget_of(a, Axis::pan).terms.empty());
  EXPECT_EQ(budget_of(a, Axis::pan).missing.front(), "needs pan.encoder.error");
  EXPECT_EQ(finding(a, "pan.pointing.error"), nullptr);
  EXPECT_TRUE(a.value("tilt.pointing.rss"));
}

TEST(PointingBudget, CountsEverythingThatIsEnteredLargestFirst) {
  const Analysis a = plain(owl_with_everything());
  for (const Axis axis : kAxes) {
    const auto& terms = budget_of(a, axis).terms;
    EXPECT_EQ(terms.size(), 10u) << "all but the droop";
    EXPECT_TRUE(
        std::ranges::is_sorted(terms, std::ranges::greater(), &PointingTerm::deviation_rad));
    double worst = 0;
    for (const PointingTerm& each : terms) worst += each.half_width_rad;
    EXPECT_NEAR(budget_of(a, axis).worst_rad, worst, tol(1e-15));
    EXPECT_LT(budget_of(a, axis).rss_rad, worst);
  }
  // By hand: 10 µm over 40 mm; 3·0.8 px; the bracket under the windup's torque.
  EXPECT_NEAR(term(a, Axis::pan, "bearing")->half_width_rad, 0.25e-3, tol(1e-10));
  const double scale = a.value("camera.pixels_per_radian").value();
  EXPECT_NEAR(term(a, Axis::pan, "vision")->half_width_rad, 2.4 / scale, tol(1e-15));
  EXPECT_NEAR(term(a, Axis::pan, "vision")->deviation_rad, 0.8 / scale, tol(1e-15));
  EXPECT_NEAR(term(a, Axis::tilt, "flex")->half_width_rad,
              term(a, Axis::tilt, "windup")->half_width_rad * 600 / 150, tol(1e-15));
  EXPECT_NEAR(term(a, Axis::pan, "ripple")->half_width_rad,
              a.value("pan.smooth.worst_ripple_px").value() / scale, tol(1e-15));
  EXPECT_EQ(term(a, Axis::pan, "ripple")->distribution, "arcsine");
  EXPECT_EQ(term(a, Axis::pan, "encoder")->distribution, "arcsine, its count rectangular");
}

TEST(PointingBudget, AddsWindupAndBendOfTheSameWeightBeforeItSquares) {
  Rig rig = owl();
  const double before = plain(rig).value("tilt.pointing.rss").value();
  rig.tilt.bracket.stiffness_Nmprad = si_quantity(20);
  const Analysis a = plain(rig);
  const double windup = a.value("tilt.pointing.windup").value();
  const double flex = a.value("tilt.pointing.flex").value();
  EXPECT_NEAR(std::pow(a.value("tilt.pointing.rss").value(), 2) - before * before,
              std::pow(windup + flex, 2) - windup * windup, tol(1e-18));
}

TEST(PointingBudget, AtTheOutputTheEncoderSeesTheGearButIsNotDivided) {
  Rig rig = owl_with_everything();
  const Analysis motor = plain(rig);
  rig.pan.encoder.at = {"output"};
  const Analysis output = plain(rig);
  EXPECT_EQ(term(output, Axis::pan, "backlash"), nullptr);
  EXPECT_EQ(term(output, Axis::pan, "windup"), nullptr);
  EXPECT_NEAR(output.value("pan.pointing.encoder").value(),
              18 * motor.value("pan.pointing.encoder").value(), tol(1e-14));
  // The cogging's ripple is another with the other loop: the other way is told without it.
  rig.pan.motor.cogging_torque_Nm = rig.tilt.motor.cogging_torque_Nm = si_quantity(0);
  const Analysis without = plain(rig);
  EXPECT_EQ(without.value("pan.pointing.rss_output_side"), without.value("pan.pointing.rss"));
  rig.pan.encoder.at = {"motor"};
  const Analysis back = plain(rig);
  EXPECT_EQ(back.value("pan.pointing.rss_motor_side"), back.value("pan.pointing.rss"));
  EXPECT_NEAR(back.value("pan.pointing.rss_output_side").value(),
              without.value("pan.pointing.rss").value(), tol(1e-15));
}

TEST(PointingBudget, LosesTheGapWhereTheWeightHoldsTheTeeth) {
  Rig rig = owl();
  // 300 g, 40 mm ahead of the tilt axis: 118 mN·m, with the camera's 18; at the ends of the travel,
  // ±57°, still 74 mN·m, more than friction holds.
  rig.on_tilt.push_back(
      {"lens", si_quantity(0.3), {si_quantity(0.04), si_quantity(0), si_quantity(0)}, Point{}});
  rig.tilt.stops.centre_rad = si_quantity(0);
  rig.tilt.stops.soft_inset_rad = si_quantity(50 * kDegree);
  const Analysis a = plain(rig);
  ASSERT_GT(a.value("tilt.pointing.teeth_torque").value(), 0.03);
  EXPECT_EQ(a.value("tilt.pointing.bias_needed").value(), 0);
  EXPECT_EQ(term(a, Axis::tilt, "backlash"), nullptr);
  EXPECT_TRUE(names(a, Axis::tilt, "Backlash: the teeth are pressed together all the time"));
  EXPECT_EQ(a.value("tilt.pointing.rss"), a.value("tilt.pointing.rss_held"));
  EXPECT_GT(a.value("tilt.pointing.backlash").value(), 0) << "the gap itself is there";
  // Friction that outweighs the pull leaves the load anywhere in the gap.
  rig.tilt.friction.coulomb_Nm = si_quantity(0.5);
  const Analysis stuck = plain(rig);
  EXPECT_NE(term(stuck, Axis::tilt, "backlash"), nullptr);
  EXPECT_NEAR(stuck.value("tilt.pointing.bias_needed").value() +
                  stuck.value("tilt.pointing.teeth_torque").value(),
              0.5, tol(1e-12));
}

TEST(PointingBudget, PreloadTakesTheGapOut) {
  const Analysis a = plain(owl());
  const double rss = a.value("pan.pointing.rss").value(),
               gap = a.value("pan.pointing.backlash").value();
  EXPECT_NEAR(a.value("pan.pointing.rss_held").value(), std::sqrt(rss * rss - gap * gap),
              tol(1e-15));
  EXPECT_EQ(a.value("pan.pointing.teeth_torque").value(), 0);
  EXPECT_NEAR(a.value("pan.pointing.bias_needed").value(), 0.04, tol(1e-12)) << "the friction";
}

TEST(PointingBudget, LoopsWithoutAnIntegralDroopAndStick) {
  Rig rig = owl();
  rig.tilt.loop.speed_integral_gain_Nmprad = {};
  const Analysis a = plain(rig);
  const double loop = 0.2 * 30;
  EXPECT_NEAR(a.value("tilt.pointing.droop").value(),
              a.value("tilt.gravity.torque_max").value() / loop, tol(1e-14));
  EXPECT_NEAR(a.value("tilt.pointing.friction").value(), 0.03 / loop + 0.03 / 600, tol(1e-14));
}

TEST(PointingBudget, TakesTheMagnetsErrorWhereItIsTheLarger) {
  Rig rig = owl();
  Encoder& encoder = rig.pan.encoder;
  encoder.magnet_offset_m = si_quantity(0.5e-3);
  encoder.magnet_tilt_rad = si_quantity(2 * kDegree);
  encoder.magnet_gap_m = si_quantity(1e-3);
  encoder.magnet_diameter_m = si_quantity(6e-3);
  encoder.magnet_thickness_m = si_quantity(2.5e-3);
  encoder.error_rad = si_quantity(0.001 * kDegree);
  const Analysis a = plain(rig);
  EXPECT_NEAR(a.value("pan.pointing.encoder").value(),
              (a.value("pan.encoder.magnet_error").value() + 180.0 / 16384 * kDegree) / 18,
              tol(1e-15));
}

TEST(PointingFinding, ComparesTheExpandedUncertaintyWithTheBand) {
  Rig rig = owl_with_everything();
  for (const Axis axis : kAxes) rig.axis(axis).friction.breakaway_Nm = {};  // else too much is left
  const Analysis a = analyse(rig);
  for (const char* axis : {"pan", "tilt"}) {
    const Finding* f = finding(a, std::string(axis) + ".pointing.error");
    ASSERT_NE(f, nullptr);
    EXPECT_EQ(f->demand, a.value(std::string(axis) + ".pointing.expanded_px"));
    EXPECT_EQ(f->capacity, 4);
    EXPECT_EQ(f->verdict, Verdict::fails) << "half a degree of mounting is 9 px";
    EXPECT_TRUE(f->because.find("mounting") != std::string::npos) << f->because;
    ASSERT_FALSE(f->remedies.empty()) << f->because << ", " << *f->demand;
    EXPECT_EQ(f->remedies.front().path, "pointing.mount_error");
    Rig mended = rig;
    mended.pointing.mount_error_rad = si_quantity(f->remedies.front().value_si);
    EXPECT_NE(finding(plain(mended), f->id)->verdict, Verdict::fails);
  }
}

TEST(Picture, SmearsAndLeansInTheFiguresAsTheCameraSays) {
  Rig rig = owl();
  const Analysis still = plain(rig);
  EXPECT_FALSE(still.value("camera.skew_px"));
  EXPECT_TRUE(still.figure("camera.skew_px")->is_aside) << "a global shutter";
  rig.camera.readout_s = si_quantity(18e-3);
  const Analysis a = plain(rig);
  // The exposure is 6 ms, a third of the readout.
  EXPECT_NEAR(a.value("camera.skew_px").value(), 3 * a.value("camera.blur_px").value(), tol(1e-9));
  EXPECT_NEAR(a.value("camera.skew_tilt_px").value(), 3 * a.value("camera.blur_tilt_px").value(),
              tol(1e-9));
  EXPECT_NEAR(
      a.value("camera.sharp_speed").value() * 6e-3 * a.value("camera.pixels_per_radian").value(), 1,
      tol(1e-12));
  EXPECT_NEAR(a.value("camera.straight_speed").value() * 3, a.value("camera.sharp_speed").value(),
              tol(1e-12));
  EXPECT_NEAR(a.value("camera.sharp_exposure").value() * a.value("camera.blur_px").value(), 6e-3,
              tol(1e-12));
}

Rig with_random_errors(std::uint64_t seed) {
  tests::Random random(seed);
  Rig rig = owl_with_everything();
  const auto size = [&](double least, double most) {
    return random.chance(0.15) ? Quantity() : si_quantity(random.log_uniform(least, most));
  };
  for (AxisParts* parts : {&rig.pan, &rig.tilt}) {
    parts->encoder.at = {random.chance(0.5) ? "motor" : "output"};
    parts->encoder.error_rad = size(1e-8, 1);
    parts->gearbox.backlash_rad = size(1e-8, 0.5);
    parts->gearbox.stiffness_Nmprad = size(1e-3, 1e7);
    parts->bracket.stiffness_Nmprad = size(1e-3, 1e7);
    parts->bearing.kind = {std::array{"pair", "single", "gearbox"}[std::size_t(random.below(3))]};
    parts->bearing.radial_play_m = size(1e-9, 1e-2);
    parts->bearing.axial_play_m = size(1e-9, 1e-2);
    parts->bearing.pitch_diameter_m = size(1e-4, 1);
    parts->bearing.spacing_m = size(1e-4, 1);
    parts->friction.breakaway_Nm = size(1e-4, 10);
    parts->motor.cogging_torque_Nm = size(1e-6, 1);
    parts->loop.speed_integral_gain_Nmprad =
        si_quantity(random.chance(0.3) ? 0 : random.log_uniform(0.01, 100));
  }
  rig.pointing.mount_error_rad = size(1e-8, 1.5);
  rig.pointing.vision_noise_px = size(1e-6, 1e3);
  rig.camera.readout_s = size(1e-9, 1);
  rig.stand.lean_rad = si_quantity(random.uniform(-1, 1));
  return rig;
}

TEST(PointingBudget, OfRandomRigsIsFiniteOrExplained) {
  int sums = 0;
  for (std::uint64_t seed = 0; seed < 60; ++seed) {
    const Analysis a = analyse(with_random_errors(seed), {.quick = true});
    for (const Figure& figure : a.figures) {
      if (figure.id.find(".pointing.") == std::string::npos && !figure.id.starts_with("camera."))
        continue;
      EXPECT_TRUE(figure.value ? std::isfinite(*figure.value) : !figure.because.empty())
          << figure.id;
    }
    for (const Axis axis : kAxes) {
      const std::string name = std::string(name_of(axis)) + ".pointing.";
      const auto rss = a.value(name + "rss"), worst = a.value(name + "worst");
      ASSERT_EQ(rss.has_value(), worst.has_value());
      if (!rss) continue;
      ++sums;
      EXPECT_LE(*rss, *worst * (1 + 1e-12)) << seed;
      EXPECT_LE(a.value(name + "deviation").value(), *rss / std::sqrt(2) * (1 + 1e-12)) << seed;
      EXPECT_LE(a.value(name + "rss_held").value(), *rss * (1 + 1e-12)) << seed;
      for (const PointingTerm& each : budget_of(a, axis).terms)
        EXPECT_GE(*rss, each.half_width_rad * (1 - 1e-12));
    }
  }
  EXPECT_GT(sums, 40);
}

}  // namespace
}  // namespace gazewright
