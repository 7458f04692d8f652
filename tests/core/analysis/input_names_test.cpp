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
  EXPECT_EQ(path_words("tilt.axis_at"), "the place of the tilt axis");
  for (const char* text : {"", "0.5", "rig.yaml", "gearbox", "e.g."})
    EXPECT_EQ(path_words(text), "") << text;
}

TEST(PathWords, SayEntriesOfListsByTheirPlaces) {
  EXPECT_EQ(path_words("on_tilt[1].mass"), "tilt body 2 mass");
  EXPECT_EQ(path_words("on_pan[0].centre[2]"), "pan body 1 centre z");
  EXPECT_EQ(path_words("on_pan[0]"), "pan body 1");
  EXPECT_EQ(path_words("detectors[0].delay"), "detector 1 delay");
  EXPECT_EQ(path_words("list[0]"), "");
}

}  // namespace
}  // namespace gazewright
