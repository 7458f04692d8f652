#include "core/analysis/reach.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/analysis/analysis.h"
#include "core/analysis/context.h"
#include "core/units/angle.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::finding;

KeepOut keep_out(const char* name, double pan_from, double pan_to, double tilt_from,
                 double tilt_to) {
  return {name,
          {si_quantity(pan_from * kDegree_rad), si_quantity(pan_to * kDegree_rad)},
          {si_quantity(tilt_from * kDegree_rad), si_quantity(tilt_to * kDegree_rad)}};
}

TEST(Reach, WithPanAllRoundItPointsAtTheSineOfItsTilt) {
  Rig rig = tests::owl();
  rig.pan.stops = {};
  rig.pan.cable = {};
  rig.pan.stops.presence = rig.pan.cable.presence = Presence::none;
  rig.tilt.stops.centre_rad = si_quantity(0);
  rig.tilt.stops.soft_inset_rad = si_quantity(50 * kDegree_rad);
  const Analysis analysis = analyse(rig, {.remedies = false});
  const double tilt = analysis.value("tilt.travel.usable").value() / 2;
  EXPECT_NEAR(analysis.value("reach.sphere_share").value(), std::sin(tilt), tol(1e-12));
  EXPECT_FALSE(analysis.value("pan.travel.long_way_time")) << "there is no blind sector";
  const ReachMap map = reach_of(rig);
  EXPECT_EQ(map.because, "");
  EXPECT_EQ(map.blind_rad, 0);
  EXPECT_NEAR(map.overhead_rad, M_PI / 2 - tilt, tol(1e-12));
}

TEST(Reach, TheMapAgreesWithTheFiguresAndTheTravels) {
  const Rig rig = tests::owl();
  const Analysis analysis = analyse(rig, {.remedies = false});
  const ReachMap map = reach_of(rig);
  EXPECT_GT(analysis.value("reach.view_share").value(),
            analysis.value("reach.sphere_share").value());
  const Travel &pan = analysis.of(Axis::pan).travel, &tilt = analysis.of(Axis::tilt).travel;
  for (std::size_t k = 0; k < map.tilt_rad.size(); ++k) {
    for (std::size_t i = 0; i < map.pan_rad.size(); ++i) {
      const double p = map.pan_rad[i], t = map.tilt_rad[k];
      const bool inside = p >= pan.least_rad() - 1e-9 && p <= pan.most_rad() + 1e-9 &&
                          t >= tilt.least_rad() - 1e-9 && t <= tilt.most_rad() + 1e-9;
      const PoseLimit limit = map.at(i, k);
      EXPECT_EQ(limit == PoseLimit::none || limit == PoseLimit::collision, inside) << p << ' ' << t;
    }
  }
}

TEST(Reach, TheMapComesFromItsInputsAloneAndEachOfThemCounts) {
  const Rig rig = tests::owl();
  const Rig inputs = reach_inputs(rig);
  EXPECT_EQ(reach_of(inputs).limit, reach_of(rig).limit);
  Rig other = rig;
  other.pan.gearbox.ratio = si_quantity(25);
  other.tilt.motor = {};
  other.camera = {};
  other.task.pan_move_rad = si_quantity(0.1);
  EXPECT_EQ(reach_inputs(other), inputs);
  other = rig;
  other.keep_outs = {keep_out("lamp", -20, 15, 30, 60)};
  EXPECT_NE(reach_inputs(other), inputs);
  EXPECT_NE(reach_of(reach_inputs(other)).limit, reach_of(rig).limit);
}

TEST(Reach, TheMirroredRigHasTheMirroredMap) {
  Rig rig = tests::owl();
  rig.pan.stops.centre_rad = si_quantity(20 * kDegree_rad);
  rig.keep_outs = {keep_out("lamp", -20, 16, 30, 60), keep_out("wall", 100, 150, -40, 10)};
  Rig mirrored = rig;
  mirrored.pan.stops.centre_rad = si_quantity(-20 * kDegree_rad);
  mirrored.keep_outs = {keep_out("lamp", -16, 20, 30, 60), keep_out("wall", -150, -100, -40, 10)};
  for (auto* bodies : {&mirrored.on_pan, &mirrored.on_tilt})
    for (Body& body : *bodies) body.centre_m[1].si = -*body.centre_m[1].si;
  const ReachMap a = reach_of(rig), b = reach_of(mirrored);
  ASSERT_EQ(a.pan_rad.size(), b.pan_rad.size());
  const std::size_t last = a.pan_rad.size() - 1;
  int closed = 0;
  for (std::size_t k = 0; k < a.tilt_rad.size(); ++k) {
    for (std::size_t i = 0; i <= last; ++i) {
      EXPECT_NEAR(a.pan_rad[i], -b.pan_rad[last - i], tol(1e-12));
      EXPECT_EQ(a.at(i, k), b.at(last - i, k)) << a.pan_rad[i] << ' ' << a.tilt_rad[k];
      closed += a.at(i, k) == PoseLimit::keep_out ? 1 : 0;
    }
  }
  EXPECT_GT(closed, 50);
  const Analysis one = analyse(rig, {.remedies = false}),
                 other = analyse(mirrored, {.remedies = false});
  EXPECT_NEAR(one.value("reach.sphere_share").value(), other.value("reach.sphere_share").value(),
              tol(1e-12));
  EXPECT_NEAR(one.value("reach.view_share").value(), other.value("reach.view_share").value(),
              tol(1e-9));
}

TEST(Reach, TheLongWayTakesAtLeastTheTravelAtTheSpeedLimit) {
  Rig rig = tests::owl();
  const double travel = analyse(rig, {.remedies = false}).value("pan.travel.usable").value();
  rig.pan.gearbox.input_speed_limit_radps = si_quantity(1e4);  // else the gear is the limit
  double before = 1e9;
  for (const double limit : {0.5, 2.0, 8.0, 1000.0}) {  // rad/s
    rig.pan.loop.speed_limit_radps = si_quantity(limit);
    Context context(rig);
    const double time = long_way_s(context, Axis::pan).value();
    const double quickest = fastest_move(context.model(Axis::pan), travel).value().time_s;
    EXPECT_LT(time, before) << limit;
    EXPECT_GT(time, travel / limit);
    EXPECT_GE(time, quickest * (1 - 1e-6));
    EXPECT_LT(time, travel / limit + quickest);
    if (limit == 1000.0) {
      EXPECT_NEAR(time, quickest, tol(1e-3 * quickest));
    }
    before = time;
  }
}

TEST(Reach, ARigWithoutATravelSaysWhatItNeeds) {
  Rig rig = tests::owl();
  rig.pan.stops = {};
  const ReachMap map = reach_of(rig);
  EXPECT_TRUE(map.because.starts_with("needs pan.stops")) << map.because;
  EXPECT_TRUE(map.limit.empty());
  EXPECT_FALSE(analyse(rig, {.remedies = false}).value("reach.sphere_share"));
}

TEST(CollisionFinding, NamesThePairAndItsRemedyKeepsThemApart) {
  Rig rig = tests::owl();
  // A shelf in front of the camera: the ball's lower front runs into it on the way down.
  Body shelf;
  shelf.name = "shelf";
  shelf.mass_kg = si_quantity(0.05);
  shelf.centre_m = {si_quantity(0.09), si_quantity(0), si_quantity(0.13)};
  shelf.shape = Box{{si_quantity(0.02), si_quantity(0.05), si_quantity(0.004)}};
  rig.on_pan.push_back(shelf);
  Body snout;
  snout.name = "snout";
  snout.mass_kg = si_quantity(0.01);
  snout.centre_m = {si_quantity(0.075), si_quantity(0), si_quantity(0)};
  snout.shape = Box{{si_quantity(0.04), si_quantity(0.01), si_quantity(0.01)}};
  rig.on_tilt.push_back(snout);
  const Analysis analysis = analyse(rig);
  const Finding* found = finding(analysis, "tilt.travel.collision");
  ASSERT_NE(found, nullptr);
  EXPECT_EQ(found->verdict, Verdict::fails);
  EXPECT_TRUE(found->because.starts_with("snout meets shelf at tilt −")) << found->because;
  EXPECT_EQ(analysis.value("tilt.travel.collision_least"), -*found->capacity);
  ASSERT_FALSE(found->remedies.empty());
  rig.tilt.stops.soft_inset_rad = si_quantity(found->remedies[0].value_si);
  const Analysis mended = analyse(rig, {.remedies = false});
  EXPECT_GE(finding(mended, "tilt.travel.collision")->margin.value(), 0);
  EXPECT_EQ(finding(mended, "pan.travel.collision"), nullptr);
}

TEST(CollisionFinding, IsTightAndNamesThePairsInEachOtherAtRest) {
  Rig rig = tests::owl();
  const Finding before = *finding(analyse(rig, {.remedies = false}), "tilt.travel.collision");
  EXPECT_EQ(before.verdict, Verdict::holds) << before.because;
  // A block on pan that reaches a few millimetres into the ball from below, away from the axis.
  Body block;
  block.name = "block";
  block.mass_kg = si_quantity(0.05);
  const auto& [radius, at] = std::pair(std::get<Shell>(rig.on_tilt[0].shape).diameter_m.value() / 2,
                                       rig.tilt_axis_at_m[2].value());
  block.centre_m = {si_quantity(0), si_quantity(0), si_quantity(at - radius)};
  block.shape = Box{{si_quantity(0.02), si_quantity(0.02), si_quantity(0.006)}};
  rig.on_pan.push_back(block);
  const Analysis analysis = analyse(rig, {.remedies = false});
  const Finding* found = finding(analysis, "tilt.travel.collision");
  EXPECT_EQ(found->verdict, Verdict::tight);
  EXPECT_NE(found->because.find("left out, as they touch at rest: " + rig.on_tilt[0].name +
                                " and block, 3 mm deep in each other"),
            std::string::npos)
      << found->because;
}

TEST(KeepOutFinding, IsAskedOnlyWhereThereAreKeepOuts) {
  Rig rig = tests::owl();
  EXPECT_EQ(finding(analyse(rig, {.remedies = false}), "pan.travel.keep_out"), nullptr);
  // The moves are ±20° of pan at tilt 0 and ±12.5° of tilt at pan 0.
  rig.keep_outs = {keep_out("lamp", -20, 15, 30, 60)};
  Analysis analysis = analyse(rig, {.remedies = false});
  EXPECT_EQ(finding(analysis, "pan.travel.keep_out")->because, "no keep-out lies across the move");
  EXPECT_NEAR(finding(analysis, "tilt.travel.keep_out")->capacity.value(), 60 * kDegree_rad,
              tol(1e-12));
  EXPECT_EQ(finding(analysis, "tilt.travel.keep_out")->verdict, Verdict::holds);
  rig.keep_outs = {keep_out("", 375, 380, -5, 5)};  // 15 to 20 deg, a turn further
  analysis = analyse(rig);
  const Finding* found = finding(analysis, "pan.travel.keep_out");
  EXPECT_NEAR(found->capacity.value(), 30 * kDegree_rad, tol(1e-9));
  EXPECT_EQ(found->verdict, Verdict::fails);
  EXPECT_FALSE(found->remedies.empty());
  rig.keep_outs = {keep_out("window", -5, 5, -5, 5)};
  EXPECT_EQ(finding(analyse(rig), "tilt.travel.keep_out")->because,
            "the rest pose itself is in window");
  rig.keep_outs[0].pan_rad[1] = {};
  EXPECT_EQ(finding(analyse(rig), "tilt.travel.keep_out")->because, "needs keep_outs[0].pan[1]");
}

}  // namespace
}  // namespace gazewright
