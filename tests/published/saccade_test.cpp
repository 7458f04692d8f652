#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "core/analysis/analysis.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

TEST(EyeDurationRatio, DividesByCarpentersSaccadeDurations) {
  // EYE-1: D = 2.2 ms/° · A + 21 ms gives 32, 43 and 65 ms at 5, 10 and 20°.
  // Source: Carpenter, Movements of the Eyes, 1988 (attribution from memory).
  constexpr std::array<std::array<double, 2>, 3> kDegreesAndSeconds{
      {{5, 32e-3}, {10, 43e-3}, {20, 65e-3}}};
  for (const auto& [degrees, seconds] : kDegreesAndSeconds) {
    Rig rig = tests::owl();
    rig.task.pan_move_rad = si_quantity(degrees * M_PI / 180);
    const Analysis analysis = analyse(rig, {.remedies = false});
    const double settle = analysis.value("pan.step.settle_time").value_or(NAN);
    // A quotient of three roundings: 1e-12 leaves a margin of a thousand.
    EXPECT_NEAR(settle / analysis.value("eye.duration_ratio").value_or(NAN), seconds,
                tol(1e-12 * seconds));
  }
}

}  // namespace
}  // namespace gazewright
