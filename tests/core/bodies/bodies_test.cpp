#include "core/bodies/bodies.h"

#include <gtest/gtest.h>

#include "tests/support/tol.h"

namespace gazewright {
namespace {

Shape ball(double diameter_m) { return Ball{si_quantity(diameter_m)}; }

TEST(Inertia, OfASolidBallIsTwoFifths) {
  // Source: Meriam & Kraige, Dynamics, table D/4 (from memory, checked by integration): 2/5 m r².
  EXPECT_NEAR(inertia_about_centre_kgm2(ball(2), 1)(0, 0), 0.4, tol(1e-15));
}

}  // namespace
}  // namespace gazewright
