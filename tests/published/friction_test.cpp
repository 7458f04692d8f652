#include <gtest/gtest.h>

#include "core/motion/smoothness.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

// Source: Canudas de Wit, Olsson, Åström & Lischinsky, IEEE Trans. Automatic Control 40 (1995) 419,
// table I and the steady-state formula of p. 420: Fc = 1 N, Fs = 1.5 N, vs = 0.001 m/s, σ2 = 0.4
// N·s/m. The values follow from them, six digits; the same numbers serve a turning axis.
TEST(StribeckFriction, FallsFromBreakawayToCoulombAsPublished) {
  const auto with_viscous = [](double speed) {
    return stribeck_friction_Nm(1, 0.5, 0.001, speed) + 0.4 * speed;
  };
  EXPECT_NEAR(with_viscous(0), 1.5, tol(5e-7));
  EXPECT_NEAR(with_viscous(0.001), 1.184340, tol(5e-7));
  EXPECT_NEAR(with_viscous(0.002), 1.009958, tol(5e-7));
  EXPECT_NEAR(with_viscous(0.005), 1.002000, tol(5e-7));
}

}  // namespace
}  // namespace gazewright
