#include "core/travel/stops.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/analysis/analysis.h"
#include "core/units/angle.h"
#include "tests/support/owl_rig.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

constexpr double kRadius_m = 0.03;

Stops stops_of(const char* kind) {
  Stops stops;
  stops.presence = Presence::given;
  stops.kind = {kind};
  stops.radius_m = si_quantity(kRadius_m);
  stops.tab_width_m = si_quantity(kRadius_m);                         // takes 60°
  stops.post_width_m = si_quantity(kRadius_m * std::numbers::sqrt2);  // takes 90°
  stops.trailers = si_quantity(2);
  stops.trailer_width_m = si_quantity(kRadius_m * std::numbers::sqrt3);  // takes 120°
  stops.window_rad = si_quantity(kPi);
  return stops;
}

TEST(StopKinds, EachHasTheTravelOfItsGeometry) {
  EXPECT_NEAR(*travel_between_stops_rad(stops_of("tab")), 2 * kPi - kPi / 3 - kPi / 2, tol(4e-15));
  EXPECT_NEAR(*travel_between_stops_rad(stops_of("window")), kPi - kPi / 3, tol(4e-15));
  // Three turns less 60°, 90° and twice 240°.
  EXPECT_NEAR(*travel_between_stops_rad(stops_of("trailing")),
              6 * kPi - kPi / 3 - kPi / 2 - 2 * 4 * kPi / 3, tol(8e-15));
}

TEST(StopKinds, ATrailingStopTurnsUntilEveryLooseTabIsPickedUp) {
  // Second method: turn the tab in small steps; whatever a part meets it takes along, until the
  // post holds all of them.
  tests::Random random(41);
  for (int i = 0; i < 40; ++i) {
    const int trailers = 1 + random.below(4);
    std::vector<double> width_rad(static_cast<std::size_t>(trailers) + 2);
    const double tab_m = random.uniform(0.002, 0.03), post_m = random.uniform(0.002, 0.03);
    const double loose_m = random.uniform(0.002, 0.03);
    for (double& w : width_rad) w = *angle_taken_rad(loose_m, kRadius_m);
    width_rad.front() = *angle_taken_rad(tab_m, kRadius_m);
    width_rad.back() = *angle_taken_rad(post_m, kRadius_m);
    // Places on an unrolled circle, tab first, post last. Each part may be at most a turn less both
    // half-widths before the next one and no closer than both half-widths.
    std::vector<double> place(width_rad.size(), 0.0);
    for (std::size_t k = place.size() - 1; k > 0; --k)
      place[k - 1] = place[k] - (2 * kPi - (width_rad[k] + width_rad[k - 1]) / 2);
    const double start = place.front(), step = 1e-4;
    bool held = false;
    while (!held) {
      place.front() += step;
      for (std::size_t k = 1; k < place.size(); ++k) {
        const double least = place[k - 1] + (width_rad[k] + width_rad[k - 1]) / 2;
        if (place[k] >= least) break;
        place[k] = least;
        held = k + 1 == place.size();
      }
    }
    EXPECT_NEAR(place.front() - start,
                *trailing_travel_rad(tab_m, post_m, kRadius_m, trailers, loose_m), tol(1.1e-4));
  }
}

TEST(StopKinds, NoLooseTabsIsASingleTurn) {
  EXPECT_EQ(trailing_travel_rad(0.008, 0.01, 0.026, 0, 0.008), stop_travel_rad(0.008, 0.01, 0.026));
}

TEST(StopKinds, TurningTheStopOverExchangesTabAndPostAndChangesNothing) {
  tests::Random random(7);
  for (int i = 0; i < 200; ++i) {
    const double r = random.log_uniform(0.005, 0.5);
    const double a = random.uniform(0, 2) * r, b = random.uniform(0, 2) * r;
    const double loose = random.uniform(0, 2) * r;
    EXPECT_NEAR(*trailing_travel_rad(a, b, r, 3, loose), *trailing_travel_rad(b, a, r, 3, loose),
                tol(1e-14));
    EXPECT_GE(*trailing_travel_rad(a, b, r, 3, loose), *stop_travel_rad(a, b, r) - 1e-14);
  }
}

TEST(StopKinds, HaveNoTravelWhereTheirPartsDoNotFit) {
  EXPECT_FALSE(window_travel_rad(kRadius_m, kPi / 3 - 1e-9, kRadius_m));
  EXPECT_NEAR(*window_travel_rad(kRadius_m, kPi / 3 + 1e-9, kRadius_m), 1e-9, tol(1e-14));
  EXPECT_FALSE(window_travel_rad(0.07, 3, kRadius_m));
  EXPECT_FALSE(trailing_travel_rad(0.01, 0.01, kRadius_m, 2, 0.0601));
  EXPECT_FALSE(trailing_travel_rad(0.0601, 0.01, kRadius_m, 2, 0.01));
  EXPECT_FALSE(angle_taken_rad(-0.001, kRadius_m));
  EXPECT_FALSE(angle_taken_rad(0.01, 0));
  EXPECT_FALSE(angle_taken_rad(0.01, std::nan("")));
}

TEST(StopKinds, AskForWhatTheyNeedAndForNothingElse) {
  const auto because_without = [](const char* kind, Quantity Stops::*field) {
    Rig rig = tests::owl();
    rig.pan.stops.kind = {kind};
    rig.pan.stops.trailer_width_m = si_quantity(0.008);
    rig.pan.stops.window_rad = si_quantity(2);
    rig.pan.stops.*field = {};
    return analyse(rig, {.remedies = false}).figure("pan.travel.stops")->because;
  };
  EXPECT_EQ(because_without("tab", &Stops::post_width_m), "needs pan.stops.post_width");
  EXPECT_EQ(because_without("tab", &Stops::trailer_width_m), "");
  EXPECT_EQ(because_without("tab", &Stops::window_rad), "");
  EXPECT_EQ(because_without("trailing", &Stops::trailer_width_m), "needs pan.stops.trailer_width");
  EXPECT_EQ(because_without("trailing", &Stops::trailers), "") << "one by default";
  EXPECT_EQ(because_without("trailing", &Stops::window_rad), "");
  EXPECT_EQ(because_without("window", &Stops::window_rad), "needs pan.stops.window");
  EXPECT_EQ(because_without("window", &Stops::radius_m), "needs pan.stops.radius");
  EXPECT_EQ(because_without("window", &Stops::post_width_m), "");
}

TEST(StopKinds, AnAxisOfMoreThanATurnHasFiguresAndNoBlindSector) {
  Rig rig = tests::owl();
  rig.pan.stops.kind = {"trailing"};
  rig.pan.stops.trailer_width_m = si_quantity(0.008);
  rig.pan.cable.free_length_m = si_quantity(1);
  const Analysis analysis = analyse(rig, {.remedies = false});
  EXPECT_GT(*analysis.value("pan.travel.usable"), 2 * kPi);
  EXPECT_EQ(analysis.value("pan.travel.blind"), 0);
  EXPECT_TRUE(analysis.value("pan.gravity.torque_max"));
  EXPECT_EQ(analysis.value("pan.homing.candidates"),
            std::ceil(*analysis.value("pan.travel.stops") / (2 * kPi / 18)));
}

TEST(StopKinds, SayWhyThereIsNoTravel) {
  Rig rig = tests::owl();
  rig.pan.stops.kind = {"window"};
  rig.pan.stops.window_rad = si_quantity(0.1);
  const Analysis analysis = analyse(rig, {.remedies = false});
  EXPECT_EQ(analysis.figure("pan.travel.stops")->because,
            "the tab does not fit into the window, or is wider than twice the stop radius");
  EXPECT_FALSE(analysis.value("pan.travel.usable"));
}

}  // namespace
}  // namespace gazewright
