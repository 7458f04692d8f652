#include <gtest/gtest.h>

#include "core/rig/fields.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

TEST(BackEfficiency, IsTwoLessTheReciprocalWhereTheRigDoesNotSay) {
  // Source: H.W. Müller, Epicyclic Drive Trains, Wayne State University Press 1982 (attribution
  // from memory): the same loss torque both ways gives 2 − 1/η. 0.5 is the limit of self-locking;
  // below it nothing comes back.
  const double forward[] = {0.9, 0.75, 0.5, 0.3}, back[] = {0.88889, 0.66667, 0, 0};
  for (int i = 0; i < 4; ++i) {
    Rig rig;
    rig.pan.gearbox.efficiency = si_quantity(forward[i]);
    const Gearbox gearbox = with_defaults(rig).pan.gearbox;
    EXPECT_NEAR(gearbox.back_efficiency.value(), back[i], tol(5e-6)) << forward[i];
    EXPECT_EQ(gearbox.back_efficiency.source, Source::by_default);
  }
}

TEST(BackEfficiency, StaysAsTheRigSays) {
  Rig rig;
  rig.pan.gearbox.efficiency = si_quantity(0.9);
  rig.pan.gearbox.back_efficiency = si_quantity(0.7);
  EXPECT_EQ(with_defaults(rig).pan.gearbox.back_efficiency.value(), 0.7);
}

}  // namespace
}  // namespace gazewright
