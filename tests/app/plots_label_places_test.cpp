#include <gtest/gtest.h>

#include <random>

#include "app/plots/label_places.h"

namespace gazewright {
namespace {

const QRectF kArea(40, 20, 400, 200);
constexpr QSizeF kWord(44, 15);

TEST(LabelPlaces, TwoUprightsNearEachOtherGetTheirWordsOutside) {
  LabelPlaces places(kArea);
  places.addUpright(100);
  places.addUpright(112);
  const QRectF stop = places.placeBeside(100, kWord), cable = places.placeBeside(112, kWord);
  EXPECT_LT(stop.right(), 100) << "to the left: the other line would pass through it";
  EXPECT_GT(cable.left(), 112);
  EXPECT_FALSE(stop.intersects(cable));
}

TEST(LabelPlaces, AtTheEdgeTheWordsStandBelowEachOther) {
  LabelPlaces places(kArea);
  for (const double x : {46.0, 54.0}) places.addUpright(x);
  const QRectF first = places.placeBeside(46, kWord), second = places.placeBeside(54, kWord);
  EXPECT_FALSE(first.intersects(second));
  EXPECT_TRUE(kArea.contains(first));
  EXPECT_TRUE(kArea.contains(second));
}

/// Seeded: whatever lines there are, no word lies over another or outside.
TEST(LabelPlaces, NoWordLiesOverAnother) {
  std::mt19937 random(11);
  std::uniform_real_distribution<double> along(kArea.left(), kArea.right());
  for (int round = 0; round < 200; ++round) {
    LabelPlaces places(kArea);
    QVector<double> lines;
    for (int i = 0; i < 4; ++i) lines.append(along(random));
    for (const double x : lines) places.addUpright(x);
    QVector<QRectF> boxes;
    for (const double x : lines) {
      const QRectF box = places.placeBeside(x, kWord);
      EXPECT_TRUE(kArea.contains(box)) << x;
      for (const QRectF& other : boxes) EXPECT_FALSE(other.intersects(box)) << x;
      boxes.append(box);
    }
  }
}

TEST(LabelPlaces, InALowPlotOnlyTheWordsThatFindRoomInItsUpperHalfStandBesideTheirLines) {
  LabelPlaces places(QRectF(40, 20, 400, 70));  // half of it is 35 high, two words and 5
  EXPECT_DOUBLE_EQ(places.placeBeside(100, kWord).top(), 21);
  EXPECT_DOUBLE_EQ(places.placeBeside(100, kWord).top(), 36);
  EXPECT_TRUE(places.placeBeside(100, kWord).isEmpty());
  EXPECT_FALSE(places.placeBeside(200, kWord).isEmpty()) << "what is left out takes no room";
  LabelPlaces lowest(QRectF(40, 20, 400, 20));
  EXPECT_FALSE(lowest.placeBeside(100, kWord).isEmpty()) << "one of them always finds room";
}

TEST(LabelPlaces, AWordTakesItsBoxOnlyWhereItIsFreeWholeAndCrossedByNoUpright) {
  LabelPlaces places(kArea);
  places.addUpright(100);
  EXPECT_FALSE(places.take(QRectF({90, 100}, kWord)));
  EXPECT_FALSE(places.take(QRectF({420, 100}, kWord))) << "it would hang out";
  EXPECT_TRUE(places.take(QRectF({200, 100}, kWord)));
  EXPECT_FALSE(places.take(QRectF({210, 110}, kWord)));
}

TEST(LabelPlaces, AWordThatHangsOverATakenPlaceMovesUp) {
  LabelPlaces places(kArea);
  const QRectF low = places.place({200, 150}, kWord, Qt::AlignHCenter | Qt::AlignBottom);
  const QRectF high = places.place({205, 150}, kWord, Qt::AlignHCenter | Qt::AlignBottom);
  EXPECT_DOUBLE_EQ(low.bottom(), 150);
  EXPECT_DOUBLE_EQ(high.bottom(), 135);
}

}  // namespace
}  // namespace gazewright
