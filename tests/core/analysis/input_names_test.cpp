#include "core/analysis/input_names.h"

#include <gtest/gtest.h>

namespace gazewright {
namespace {

TEST(PathWords, SayAPartOnceWhereTheLabelNamesIt) {
  EXPECT_EQ(path_words("pan.stops.stiffness"), "pan stop stiffness");
  EXPECT_EQ(path_words("pan.homing.current"), "pan homing current");
  EXPECT_EQ(path_words("tilt.friction.coulomb"), "tilt Coulomb friction");
  EXPECT_EQ(path_words("pan.motor.speed_constant"), "pan motor speed constant (KV)");
  EXPECT_EQ(path_words("pan.stops.soft_inset"), "pan stops soft limit inset");
}

TEST(PathWords, SayAWholePartAndTheBodiesAndLeaveOtherTextAlone) {
  EXPECT_EQ(path_words("pan.stops"), "pan stops");
  EXPECT_EQ(path_words("on_tilt"), "the bodies on tilt");
  for (const char* text : {"", "0.5", "rig.yaml", "gearbox", "e.g."})
    EXPECT_EQ(path_words(text), "") << text;
}

}  // namespace
}  // namespace gazewright
