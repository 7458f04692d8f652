#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "core/loads/screws.h"
#include "tests/support/tol.h"

/// Screws and bolted joints against standards and textbooks.
namespace gazewright {
namespace {

constexpr double kInch_m = 0.0254, kPound_N = 4.4482216152605, kInchPound_Nm = kInch_m * kPound_N;

TEST(PublishedScrews, StressAreas) {
  // ISO 898-1 tables 4 and 5 (M3 to M6); ISO 724 geometry, from memory (M2, M2.5). In mm².
  struct Row {
    const char* name;
    double area_mm2;
  };
  for (const Row row :
       {Row{"M2", 2.07}, {"M2.5", 3.39}, {"M3", 5.03}, {"M4", 8.78}, {"M5", 14.2}, {"M6", 20.1}})
    EXPECT_NEAR(find_thread(row.name)->stress_area_m2() * 1e6, row.area_mm2,
                tol(3e-3) * row.area_mm2)
        << row.name;
}

TEST(PublishedScrews, ProofAndLeastUltimateLoads) {
  // ISO 898-1 table 5 (proof) and table 4 (ultimate), as public tables print them. In N.
  struct Row {
    const char *strength, *thread;
    double proof_N, ultimate_N;  ///< 0: not looked up
  };
  constexpr std::array<Row, 12> kRows{{{"8.8", "M3", 2920, 4020},
                                       {"8.8", "M4", 5100, 0},
                                       {"8.8", "M5", 8230, 11350},
                                       {"8.8", "M6", 11600, 0},
                                       {"10.9", "M3", 4180, 5230},
                                       {"10.9", "M4", 7290, 9130},
                                       {"10.9", "M5", 11800, 14800},
                                       {"10.9", "M6", 16700, 0},
                                       {"12.9", "M3", 4880, 6140},
                                       {"12.9", "M4", 8520, 0},
                                       {"12.9", "M5", 13800, 17300},
                                       {"12.9", "M6", 19500, 0}}};
  for (const Row& row : kRows) {
    // The standard multiplies the area as it lists it, with three digits.
    const double exact_mm2 = find_thread(row.thread)->stress_area_m2() * 1e6;
    const double digit_mm2 = exact_mm2 < 10 ? 0.01 : 0.1;
    const double area = std::round(exact_mm2 / digit_mm2) * digit_mm2 * 1e-6;
    const ScrewClass& strength = *find_screw_class(row.strength);
    EXPECT_NEAR(area * strength.proof_Pa, row.proof_N, tol(6e-3) * row.proof_N)
        << row.thread << ' ' << row.strength;
    if (row.ultimate_N > 0) {
      EXPECT_NEAR(area * strength.tensile_Pa, row.ultimate_N, tol(5e-3) * row.ultimate_N)
          << row.thread << ' ' << row.strength;
    }
  }
}

TEST(PublishedScrews, PreloadOfATighteningTorque) {
  // T. H. Wentzell, Machine Design, ex. 6.1, p. 120: 3/4-10 UNC, As = 0.334 in², Sp = 85 ksi,
  // K = 0.2, F = 0.85·As·Sp = 24 131.5 lbf, T = 3619.7 lbf·in = 408.97 N·m.
  const double force_N = 0.85 * 0.334 * 85e3 * kPound_N;
  EXPECT_NEAR(preload_N(3619.725 * kInchPound_Nm, 0.2, 0.75 * kInch_m), force_N,
              tol(0.1 * kPound_N));
  EXPECT_NEAR(3619.725 * kInchPound_Nm, 408.97, tol(5e-3));
  // Ex. 6.4, p. 124, lubricated: 1.25 in stud, A = 1.073 in², F = 0.9·120 ksi·A, K = 0.15,
  // T = 21 728.25 lbf·in.
  EXPECT_NEAR(preload_N(21728.25 * kInchPound_Nm, 0.15, 1.25 * kInch_m),
              0.9 * 120e3 * 1.073 * kPound_N, tol(0.01 * kPound_N));
}

TEST(PublishedScrews, PreloadScattersByAThird) {
  // SAND2008-0371, appendix C, after Shigley: T = 1800 lbf·in, K = 0.2, d = 0.625 in, ±35 %:
  // 14 400 lbf, from 9360 to 19 440.
  const double mean = preload_N(1800 * kInchPound_Nm, 0.2, 0.625 * kInch_m) / kPound_N;
  EXPECT_NEAR(mean, 14400, tol(1e-9) * 14400);
  EXPECT_NEAR(mean * (1 - joint_rules().preload_scatter), 9360, tol(1e-9) * 14400);
  EXPECT_NEAR(mean * (1 + joint_rules().preload_scatter), 19440, tol(1e-9) * 14400);
}

TEST(PublishedScrews, NutFactorOfADryScrewIsAboutTheTextbooks) {
  // Textbooks take K = 0.2 for dry steel and 0.15 greased (Wentzell, ex. 6.1 and 6.4); with
  // friction coefficients of 0.14 to 0.15 and of 0.1 the formula has to give about that.
  for (const char* name : {"M3", "M4", "M5", "M6", "M8"}) {
    EXPECT_NEAR(nut_factor(*find_thread(name), 0.145), 0.2, 0.01) << name;
    EXPECT_NEAR(nut_factor(*find_thread(name), 0.1), 0.15, 0.01) << name;
  }
}

TEST(PublishedScrews, FrictionOfABoltCircle) {
  // Coulomb: µ·n·F·R = 0.15·4·1000 N·10 mm = 6 N·m.
  EXPECT_DOUBLE_EQ(slip_torque_Nm(0.15, 4, 1000, 0.020), 6.0);
  // E. P. Popov, Engineering Mechanics of Solids, ch. 4: eight bolts of 30 mm on a circle of 240
  // mm, 40 MPa of shear: 27.13 kN·m; friction of coefficient 1 is such a force.
  const double area = M_PI / 4 * 0.03 * 0.03;
  EXPECT_NEAR(slip_torque_Nm(1, 8, 40e6 * area, 0.24), 27.13e3, tol(1e-3) * 27.13e3);
}

TEST(PublishedScrews, ThreadEngagement) {
  // FED-STD-H28 in its simplified form, from memory: M5 x 0.8 in the same material, 4.03 mm.
  EXPECT_NEAR(thread_engagement_m(*find_thread("M5")) * 1e3, 4.03, tol(0.01));
}

}  // namespace
}  // namespace gazewright
