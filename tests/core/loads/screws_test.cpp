#include "core/loads/screws.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::Random;

TEST(Screws, TheTorqueForAStressGivesThatStress) {
  for (const char* name : {"M2", "M2.5", "M3", "M4", "M5", "M6", "M8"}) {
    const Thread& thread = *find_thread(name);
    for (const double friction : {0.05, 0.14, 0.4}) {
      const double torque = torque_for_stress_Nm(thread, friction, 300e6);
      const double force = preload_N(torque, nut_factor(thread, friction), thread.diameter_m);
      EXPECT_NEAR(tightening_stress_Pa(thread, friction, force), 300e6, tol(1e-6)) << name;
      EXPECT_GT(tightening_stress_Pa(thread, friction, force), force / thread.stress_area_m2())
          << "the twist adds to it";
    }
  }
}

TEST(Screws, WithoutFrictionTheTorqueOnlyLifts) {
  // Work of one turn: 2π·T = F·P; 0.159 is 1/2π to three digits.
  const Thread& thread = *find_thread("M6");
  const double force = preload_N(1, nut_factor(thread, 0), thread.diameter_m);
  EXPECT_NEAR(2 * M_PI / (force * thread.pitch_m), 1, tol(1.1e-3));
}

TEST(Screws, PullOfAMomentIsThatOfAStraightLineThroughTheCircle) {
  // A rigid flange that tips about its middle loads each screw by its distance: F = M·x/Σx².
  Random random(3);
  for (int n = 3; n < 13; ++n) {
    const double R = random.log_uniform(0.005, 0.05), moment = random.log_uniform(0.1, 10);
    double most = 0;
    for (double turn = 0; turn < 2 * M_PI / n; turn += 1e-3) {
      double sum = 0, far = 0;
      for (int i = 0; i < n; ++i) {
        const double x = R * std::cos(turn + 2 * M_PI * i / n);
        sum += x * x;
        far = std::max(far, x);
      }
      most = std::max(most, moment * far / sum);
    }
    EXPECT_NEAR(worst_screw_pull_N(moment, 0, n, 2 * R), most, tol(1e-5) * most) << n;
  }
  EXPECT_DOUBLE_EQ(worst_screw_pull_N(0, 12, 4, 0.03), 3);
}

TEST(Screws, AFlatBearsWhatItsPressureAddsUpTo) {
  // Pressure p·2x/w at x from the middle, on one half: the sum of p·2x/w·L·x over 0 to w/2.
  const double p = 30e6, L = 0.012, d = 0.008, w = 0.6 * d;
  double torque = 0;
  constexpr int kSteps = 2000;
  for (int i = 0; i < kSteps; ++i) {
    const double x = w / 2 * (i + 0.5) / kSteps;
    torque += p * 2 * x / w * L * x * (w / 2 / kSteps);
  }
  EXPECT_NEAR(flat_torque_Nm(p, L, d), torque, tol(1e-6) * torque);
  // 0.1·d deep: the chord of that depth is 0.6·d wide.
  EXPECT_NEAR(2 * std::sqrt(0.25 - 0.16), 0.6, tol(1e-12));
}

TEST(Screws, AClampOfTwoLinesHoldsLessThanOneThatFitsAllRound) {
  // All round with pressure q a turn: clamp force across the split F = q·d/2·2 (halves), friction
  // µ·q·π·d/2·d... added up in small pieces.
  const double mu = 0.15, F = 2000, d = 0.008;
  const double q = F / d;  // N per metre of circumference: a half pushes q·d across
  double torque = 0;
  for (int i = 0; i < 1000; ++i) torque += mu * q * (M_PI * d / 1000) * d / 2;
  EXPECT_NEAR(torque / clamp_torque_Nm(mu, F, d), M_PI / 2, tol(1e-9));
}

TEST(Screws, WhatIsNotInTheTablesIsNotThere) {
  EXPECT_EQ(find_thread("unstated"), nullptr);
  EXPECT_EQ(find_thread(""), nullptr);
  EXPECT_EQ(find_screw_class("9.9"), nullptr);
  for (const char* name : {"4.8", "5.8", "8.8", "10.9", "12.9", "A2-50", "A2-70", "A4-80"}) {
    ASSERT_NE(find_screw_class(name), nullptr) << name;
    EXPECT_LT(find_screw_class(name)->proof_Pa, find_screw_class(name)->tensile_Pa) << name;
  }
}

}  // namespace
}  // namespace gazewright
