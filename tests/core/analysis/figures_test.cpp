#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/analysis/analysis.h"
#include "core/rig/fields.h"
#include "tests/support/owl_rig.h"

namespace gazewright {
namespace {

using tests::owl;
constexpr double kDeg = M_PI / 180;

// Written out from design section 6, so that a renamed id fails here.
const std::vector<std::string> kAxisIds{"inertia.load",
                                        "inertia.rotor_reflected",
                                        "inertia.ratio",
                                        "gravity.torque_max",
                                        "motor.torque_constant",
                                        "motor.constant",
                                        "output.torque_stall",
                                        "output.speed_top",
                                        "output.acceleration_peak",
                                        "ratio.best_acceleration",
                                        "move.shortest_time",
                                        "ratio.best_time",
                                        "step.rise_time",
                                        "step.overshoot",
                                        "step.settle_time",
                                        "step.peak_current",
                                        "step.peak_speed",
                                        "loop.antiresonance",
                                        "loop.resonance",
                                        "loop.crossover",
                                        "loop.phase_margin",
                                        "loop.gain_margin",
                                        "loop.position_crossover",
                                        "loop.position_phase_margin",
                                        "loop.position_gain_margin",
                                        "travel.stops",
                                        "travel.cable",
                                        "travel.soft",
                                        "travel.usable",
                                        "travel.blind",
                                        "travel.braking_angle",
                                        "stop.energy",
                                        "stop.torque",
                                        "homing.spacing",
                                        "homing.candidates"};
const std::vector<std::string> kRigIds{"mass.on_pan",
                                       "mass.on_tilt",
                                       "mass.total",
                                       "pan.inertia.load_min",
                                       "pan.inertia.load_max",
                                       "tilt.balance.offset",
                                       "camera.pixels_per_radian",
                                       "camera.blur_px",
                                       "eye.duration_ratio"};

Analysis figures_only(const Rig& rig) { return analyse(rig, {.remedies = false}); }

TEST(Figures, OfTheStepKeepToTheDrivesSpeedLimitAsToTheLoops) {
  const Analysis whole = analyse(owl(), {.remedies = false});
  Rig of_drive = owl(), of_loop = owl();
  const double limit_radps = 0.3 * whole.value("pan.step.peak_speed").value();
  of_drive.pan.drive.speed_limit_radps = si_quantity(limit_radps);
  of_loop.pan.loop.speed_limit_radps = si_quantity(limit_radps);
  const Analysis a = analyse(of_drive, {.remedies = false}),
                 b = analyse(of_loop, {.remedies = false});
  for (const char* id : {"pan.step.settle_time", "pan.step.peak_speed", "pan.step.peak_current"})
    EXPECT_EQ(a.value(id), b.value(id)) << id;
  EXPECT_GT(a.value("pan.step.settle_time"), whole.value("pan.step.settle_time"));
}

TEST(Figures, AreAllThereForACompleteRig) {
  const Analysis analysis = figures_only(owl());
  std::vector<std::string> ids = kRigIds;
  for (const std::string& id : kAxisIds) ids.push_back("pan." + id), ids.push_back("tilt." + id);
  for (const std::string& id : ids) {
    const Figure* figure = analysis.figure(id);
    ASSERT_NE(figure, nullptr) << id;
    EXPECT_TRUE(figure->value.has_value()) << id << ": " << figure->because;
  }
}

TEST(Figures, FollowTheDefinitionsOfTheDesign) {
  const Analysis a = figures_only(owl());
  const auto value = [&](const char* id) { return a.value(id).value_or(NAN); };
  // Each line is section 6 done by hand with the owl's numbers.
  const double kt = std::sqrt(3) / 2 * 60 / (2 * M_PI * 410);
  const double reflected = 18 * 18 * (118e-7 + 12e-7);
  EXPECT_NEAR(value("pan.motor.torque_constant"), kt, 1e-12);
  EXPECT_NEAR(value("pan.motor.constant"), kt / std::sqrt(1.5 * 0.062), 1e-12);
  EXPECT_NEAR(value("pan.inertia.rotor_reflected"), reflected, 1e-12);
  EXPECT_NEAR(value("pan.inertia.ratio"), value("pan.inertia.load") / reflected, 1e-12);
  // At standstill 24 V · 15 A feed 1.5·R·i²: i = 62.2 A, so the drive's 30 A rule.
  EXPECT_NEAR(value("pan.output.torque_stall"), 0.9 * 18 * kt * 30, 1e-9);
  // 8000 rpm at the input rule over 0.95·24 V·410 rpm/V = 9348 rpm.
  EXPECT_NEAR(value("pan.output.speed_top"), 8000.0 / 18 * 2 * M_PI / 60, 1e-9);
  EXPECT_NEAR(value("pan.output.acceleration_peak"),
              (0.9 * 18 * kt * 30 - 0.04) / (value("pan.inertia.load") + 0.9 * reflected), 1e-9);
  EXPECT_NEAR(value("pan.travel.stops"),
              2 * M_PI - 2 * std::asin(8.0 / 52) - 2 * std::asin(10.0 / 52), 1e-12);
  EXPECT_NEAR(value("pan.travel.cable"), 2 * 900 * kDeg * 0.26, 1e-12);
  EXPECT_NEAR(value("pan.travel.soft"), value("pan.travel.stops") - 12 * kDeg, 1e-12);
  EXPECT_NEAR(value("pan.travel.usable"), value("pan.travel.soft"), 1e-12);
  EXPECT_NEAR(value("pan.travel.blind"), 2 * M_PI - value("pan.travel.usable"), 1e-12);
  const double moving = value("pan.inertia.load") + reflected, top = value("pan.output.speed_top");
  EXPECT_NEAR(value("pan.stop.energy"), moving * top * top / 2, 1e-9);
  EXPECT_NEAR(value("pan.stop.torque"),
              top * std::sqrt(400 * moving) + value("pan.output.torque_stall"), 1e-9);
  EXPECT_NEAR(value("pan.homing.spacing"), 20 * kDeg, 1e-12);
  EXPECT_EQ(value("pan.homing.candidates"), 17);  // 320.1° of travel hold 16.006 spacings
  EXPECT_NEAR(value("camera.pixels_per_radian"), 640 / std::tan(31 * kDeg), 1e-9);
  EXPECT_NEAR(value("camera.blur_px"), 640 / std::tan(31 * kDeg) * top * 6e-3, 1e-9);
  EXPECT_NEAR(value("mass.total"), 0.558, 1e-12);
  EXPECT_NEAR(value("tilt.balance.offset"), 0.048 / 0.208 * std::hypot(0.038, 0.002), 1e-12);
  EXPECT_NEAR(value("eye.duration_ratio"), value("pan.step.settle_time") / (2.2e-3 * 40 + 21e-3),
              1e-12);
}

TEST(Figures, PanInertiaLiesBetweenItsExtremesOverTheTiltTravel) {
  const Analysis a = figures_only(owl());
  EXPECT_LE(*a.value("pan.inertia.load_min"), *a.value("pan.inertia.load"));
  EXPECT_GE(*a.value("pan.inertia.load_max"), *a.value("pan.inertia.load"));
  EXPECT_LT(*a.value("pan.inertia.load_min"), *a.value("pan.inertia.load_max"));
}

TEST(Figures, AMissingInputEmptiesJustWhatNeedsItAndIsNamed) {
  Rig rig = owl();
  rig.pan.motor.rotor_inertia_kgm2 = {};
  const Analysis a = figures_only(rig);
  for (const char* id : {"pan.inertia.rotor_reflected", "pan.step.settle_time", "pan.stop.energy",
                         "pan.move.shortest_time", "pan.loop.resonance", "eye.duration_ratio"}) {
    EXPECT_FALSE(a.value(id).has_value()) << id;
    EXPECT_EQ(a.figure(id)->because, "needs pan.motor.rotor_inertia") << id;
  }
  for (const char* id : {"pan.output.torque_stall", "pan.inertia.load", "pan.loop.antiresonance",
                         "pan.travel.stops", "tilt.step.settle_time"}) {
    EXPECT_TRUE(a.value(id).has_value()) << id;
  }
}

TEST(Figures, BrakingFromTopSpeedNeedsNoMove) {
  Rig rig = owl();
  rig.task.pan_move_rad = {};
  const Analysis a = figures_only(rig);
  EXPECT_EQ(a.value("pan.travel.braking_angle"),
            figures_only(owl()).value("pan.travel.braking_angle"));
  EXPECT_FALSE(a.value("pan.move.shortest_time").has_value());
}

TEST(Figures, APointOnTheTiltAxisLeavesTiltUnknownAndEndsSoon) {
  Rig rig = owl();
  Body point = rig.on_tilt.front();
  point.centre_m = {si_quantity(0), si_quantity(0), si_quantity(0)};
  point.shape = Point{};
  rig.on_tilt = {point};
  const Analysis a = figures_only(rig);
  for (const char* id : {"tilt.inertia.load", "tilt.step.settle_time", "tilt.loop.resonance"}) {
    EXPECT_FALSE(a.value(id).has_value()) << id;
    EXPECT_TRUE(a.figure(id)->because.ends_with("(its inertia is 0)")) << a.figure(id)->because;
  }
  EXPECT_TRUE(a.value("pan.step.settle_time").has_value());
  EXPECT_TRUE(a.value("mass.on_tilt").has_value());
}

TEST(Figures, AnEmptyRigSaysWhatEachOneNeeds) {
  const Analysis a = figures_only(Rig{});
  for (const Figure& figure : a.figures) {
    EXPECT_FALSE(figure.value.has_value()) << figure.id;
    EXPECT_TRUE(figure.because.starts_with("needs ")) << figure.id << ": " << figure.because;
  }
}

TEST(Figures, APanThatCarriesNothingMustBeSaid) {
  Rig rig = owl();
  rig.on_pan.clear();
  EXPECT_EQ(figures_only(rig).figure("mass.on_pan")->because, "needs on_pan");
  EXPECT_FALSE(figures_only(rig).value("pan.step.settle_time").has_value());
  rig.on_pan_is_bare = true;  // as `on_pan: []` reads
  EXPECT_EQ(figures_only(rig).value("mass.on_pan"), 0.0);
  EXPECT_TRUE(figures_only(rig).value("pan.step.settle_time").has_value());
}

TEST(Figures, ARigThatCannotMoveIsAnAnswer) {
  Rig rig = owl();
  rig.pan.friction.coulomb_Nm = si_quantity(50);
  const Analysis a = figures_only(rig);
  EXPECT_FALSE(a.value("pan.step.settle_time").has_value());
  EXPECT_TRUE(a.figure("pan.step.settle_time")->because.starts_with("cannot move"))
      << a.figure("pan.step.settle_time")->because;
  EXPECT_FALSE(a.value("pan.move.shortest_time").has_value());
}

/// Multiplies every number of the rig by a random factor of its own, keeping it in its range.
Rig shaken(Rig rig, std::mt19937& random, double decades) {
  std::uniform_real_distribution<double> exponent(-decades, decades);
  for (const FieldRef& field : all_fields(rig)) {
    const auto* ref = std::get_if<QuantityRef>(&field);
    if (ref == nullptr || !ref->quantity->si || !std::isfinite(*ref->quantity->si)) continue;
    const double value = *ref->quantity->si * std::pow(10, exponent(random));
    const double tried = ref->info->whole ? std::round(value) : value;
    if (range_problem(*ref->info, tried).empty()) ref->quantity->si = tried;
  }
  return rig;
}

TEST(Figures, AreFiniteOrExplainedForRandomRigsOfAnyScale) {
  std::mt19937 random(20261);
  int settled = 0;
  for (int i = 0; i < 24; ++i) {
    const Analysis a = figures_only(shaken(owl(), random, i % 3 == 0 ? 1.5 : 0.3));
    for (const Figure& figure : a.figures) {
      EXPECT_NE(figure.value.has_value(), !figure.because.empty()) << i << " " << figure.id;
      EXPECT_TRUE(std::isfinite(figure.value.value_or(0))) << i << " " << figure.id;
    }
    settled += a.value("pan.step.settle_time").has_value();
  }
  EXPECT_GT(settled, 5);  // else the rigs would be too wild to mean anything
}

TEST(Figures, AreTheSameEveryTime) {
  const Analysis a = figures_only(owl()), b = figures_only(owl());
  ASSERT_EQ(a.figures.size(), b.figures.size());
  for (std::size_t i = 0; i < a.figures.size(); ++i) {
    EXPECT_EQ(a.figures[i].value, b.figures[i].value) << a.figures[i].id;
  }
}

}  // namespace
}  // namespace gazewright
