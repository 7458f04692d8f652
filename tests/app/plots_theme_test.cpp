#include <gtest/gtest.h>

#include "app/plots/theme.h"

namespace gazewright {
namespace {

constexpr ThemeKind kAll[]{ThemeKind::light, ThemeKind::dark, ThemeKind::high_contrast,
                           ThemeKind::print};

TEST(Theme, ContrastOfBlackAndWhiteIsTwentyOne) {
  // Source: WCAG 2.2, definition of contrast ratio: 21:1 is the largest.
  EXPECT_NEAR(contrast_ratio(Qt::black, Qt::white), 21, 1e-9);
  // Source: needs, part C 17: vermillion #D55E00 on white 3.9, blue #0072B2 5.2.
  EXPECT_NEAR(contrast_ratio("#d55e00", Qt::white), 3.9, 0.05);
  EXPECT_NEAR(contrast_ratio("#0072b2", Qt::white), 5.2, 0.05);
}

TEST(Theme, TextReachesFourAndAHalfToOneOnEveryGround) {
  for (const ThemeKind kind : kAll) {
    const Theme theme = theme_for(kind);
    for (const QColor& ground : {theme.card, theme.surface}) {
      for (const QColor& text : {theme.text, theme.quiet, theme.pan_text, theme.tilt_text,
                                 theme.good, theme.tight, theme.bad, theme.unknown}) {
        EXPECT_GE(contrast_ratio(text, ground), 4.5)
            << text.name().toStdString() << " on " << ground.name().toStdString();
      }
    }
  }
}

TEST(Theme, GraphicsReachThreeToOneOnEveryGround) {
  for (const ThemeKind kind : kAll) {
    const Theme theme = theme_for(kind);
    for (const QColor& ground : {theme.card, theme.surface}) {
      for (const QColor& line :
           {theme.pan, theme.tilt, theme.control, theme.ghost, theme.neutral, theme.focus}) {
        EXPECT_GE(contrast_ratio(line, ground), 3.0)
            << line.name().toStdString() << " on " << ground.name().toStdString();
      }
    }
  }
}

TEST(Theme, VerdictsDifferBySymbolAndWord) {
  QStringList symbols, words;
  for (const Verdict verdict : {Verdict::holds, Verdict::tight, Verdict::fails, Verdict::unknown}) {
    symbols << verdict_symbol(verdict);
    words << verdict_word(verdict);
  }
  EXPECT_EQ(symbols.removeDuplicates(), 0);
  EXPECT_EQ(words.removeDuplicates(), 0);
}

}  // namespace
}  // namespace gazewright
