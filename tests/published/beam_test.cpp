#include "core/loads/beam.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/loads/section.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

TEST(PublishedBeams, ACantileverBendsUnderAForceAtItsEnd) {
  // Source: R. K. Bansal, Strength of Materials, Prob. 13.1, p. 557: 25 kN, 3 m, I = 1e8 mm⁴,
  // E = 2.1e5 MPa: 0.005357 rad, 10.71 mm. Half a unit of the last digit: 5e-4 relative.
  const Bend bend = bend_by_force(2.1e11 * 1e-4, 3, 25e3, 3);
  EXPECT_NEAR(bend.slope_rad, 0.005357, tol(5e-7));
  EXPECT_NEAR(bend.deflection_m, 10.71e-3, tol(5e-6));
}

TEST(PublishedBeams, BeyondTheForceACantileverStaysStraight) {
  // Source: the same, Prob. 13.2, p. 557: 50 kN at 2 m of 3 m, E = 2e5 MPa: 0.005 rad, 11.67 mm.
  const Bend bend = bend_by_force(2e11 * 1e-4, 3, 50e3, 2);
  EXPECT_NEAR(bend.slope_rad, 0.005, tol(1e-12));
  EXPECT_NEAR(bend.deflection_m, 11.67e-3, tol(5e-6));
}

TEST(PublishedBeams, ACantileverBendsUnderItsOwnWeight) {
  // Source: the same, Prob. 13.3, p. 559: 16.4 kN/m over 2.5 m, I = 7.95e7 mm⁴: 5.036 mm.
  const Bend bend = bend_by_own_weight(2e11 * 7.95e-5, 2.5, 16.4e3 * 2.5);
  EXPECT_NEAR(bend.deflection_m, 5.036e-3, tol(5e-6));
  EXPECT_NEAR(bend.slope_rad, bend.deflection_m * 8 / 6 / 2.5, tol(1e-12));
}

TEST(PublishedBeams, ATorqueShearsRectanglesAndABox) {
  // Source: Beer, Johnston, DeWolf, Mechanics of Materials, Sample Prob. 3.9, p. 203: 40 MPa in a
  // 40 mm square, 64 by 25 mm, and a square tube of 40 mm with a 6 mm wall: 532, 414, 555 N·m. The
  // book's coefficients have three digits: 2e-3.
  EXPECT_NEAR(torsion_stress_Pa({0.040, 0.040}, 532), 40e6, tol(8e4));
  EXPECT_NEAR(torsion_stress_Pa({0.064, 0.025}, 414), 40e6, tol(8e4));
  EXPECT_NEAR(torsion_stress_Pa({0.025, 0.064}, 414), 40e6, tol(8e4));
  EXPECT_NEAR(torsion_stress_Pa({0.040, 0.040, 0.006}, 555), 40e6, tol(8e4));
}

TEST(PublishedBeams, TorsionOfARectangleIsWithinAThirdOfAPercentOfTheSeries) {
  // Source: Timoshenko & Goodier, Theory of Elasticity, exact series; Roark, table 10.1.
  EXPECT_NEAR(rectangle_torsion_m4(1, 1), 0.140577, tol(3e-3 * 0.140577));
  EXPECT_NEAR(rectangle_torsion_m4(2, 1), 2 * 0.228682, tol(3e-3 * 2 * 0.228682));
  EXPECT_NEAR(rectangle_torsion_m4(1, 4), 4 * 0.280813, tol(3e-3 * 4 * 0.280813));
  EXPECT_NEAR(rectangle_torsion_m4(2, 1) / 2, 0.228880, tol(5e-7)) << "Roark's own value";
}

TEST(PublishedBeams, ADiscAtTheEndOfAShaftSwingsAndTwists) {
  // Source: Bevan, Theory of Machines, ch. 15, ex. 1, p. 535: 672 lb, radius of gyration 15 in, on
  // 36 in of a 3 in shaft, E = 30e6, G = 12e6 psi: 634 and 786 cycles a minute (book constant
  // 187.8: 0.2 %). In inches, pounds and seconds with g = 386.1 in/s².
  const double I = std::numbers::pi * std::pow(3.0, 4) / 64, mass = 672 / 386.1;
  EXPECT_NEAR(60 * bending_frequency_Hz(30e6 * I, 36, mass, 0), 634, tol(2e-3 * 634));
  EXPECT_NEAR(60 * torsion_frequency_Hz(12e6 * 2 * I, 36, mass * 15 * 15, 0), 786, tol(2e-3 * 786));
}

TEST(PublishedBeams, ABareBeamSwingsOneAndAHalfPercentBelowRayleigh) {
  // Source: Blevins, Formulas for Natural Frequency and Mode Shape (from memory): exact 3.5160²
  // against Rayleigh's 3/(33/140) = 12.727: √(12.727/12.362) = 1.0146.
  const double exact = std::pow(1.8751040687, 2) / (2 * std::numbers::pi);
  EXPECT_NEAR(bending_frequency_Hz(1, 1, 0, 1) / exact, 1.0146, tol(1e-4));
}

}  // namespace
}  // namespace gazewright
