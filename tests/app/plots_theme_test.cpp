#include <gtest/gtest.h>

#include "app/plots/theme.h"

namespace gazewright {
namespace {

const Theme kAll[]{theme_for(ThemeKind::light), theme_for(ThemeKind::dark),
                   theme_for(ThemeKind::high_contrast), dark_contrast_theme(),
                   theme_for(ThemeKind::print)};

TEST(Theme, ContrastOfBlackAndWhiteIsTwentyOne) {
  // Source: WCAG 2.2, definition of contrast ratio: 21:1 is the largest.
  EXPECT_NEAR(contrast_ratio(Qt::black, Qt::white), 21, 1e-9);
  // Source: needs, part C 17: vermillion #D55E00 on white 3.9, blue #0072B2 5.2.
  EXPECT_NEAR(contrast_ratio("#d55e00", Qt::white), 3.9, 0.05);
  EXPECT_NEAR(contrast_ratio("#0072b2", Qt::white), 5.2, 0.05);
}

TEST(Theme, TextReachesFourAndAHalfToOneOnEveryGround) {
  for (const Theme& theme : kAll) {
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
  for (const Theme& theme : kAll) {
    for (const QColor& ground : {theme.card, theme.surface}) {
      for (const QColor& line :
           {theme.pan, theme.tilt, theme.control, theme.ghost, theme.neutral, theme.focus}) {
        EXPECT_GE(contrast_ratio(line, ground), 3.0)
            << line.name().toStdString() << " on " << ground.name().toStdString();
      }
    }
  }
}

TEST(Theme, TextOnMarkedGroundsReachesFourAndAHalfToOneToo) {
  for (const Theme& theme : kAll) {
    // The selected row of a table, the allowed bands, marked text, the tile that is chosen.
    for (const QColor& text : {theme.text, theme.quiet, theme.good, theme.tight, theme.bad})
      EXPECT_GE(contrast_ratio(text, theme.band), 4.5)
          << theme.card.name().toStdString() << ": " << text.name().toStdString();
    EXPECT_GE(contrast_ratio(theme.card, theme.focus), 4.5) << theme.card.name().toStdString();
    for (const Axis axis : kAxes) {
      const QColor chosen = blended(axis_colour(theme, axis), theme.card, 0.08);
      for (const QColor& text : {theme.text, theme.quiet})
        EXPECT_GE(contrast_ratio(text, chosen), 4.5) << theme.card.name().toStdString();
      EXPECT_GE(contrast_ratio(axis_colour(theme, axis), chosen), 3.0)
          << theme.card.name().toStdString();
    }
  }
}

TEST(Theme, GraphicsReachThreeToOneOnTheTintedBandToo) {
  for (const Theme& theme : kAll) {
    for (const QColor& line : {theme.pan, theme.tilt, theme.control, theme.focus, theme.good})
      EXPECT_GE(contrast_ratio(line, theme.band), 3.0)
          << theme.card.name().toStdString() << ": " << line.name().toStdString();
  }
}

TEST(Theme, HighContrastReachesSevenToOneForText) {
  // Source: WCAG 2.2, 1.4.6 (enhanced contrast).
  for (const Theme& theme : {theme_for(ThemeKind::high_contrast), dark_contrast_theme()}) {
    for (const QColor& text : {theme.text, theme.quiet, theme.pan_text, theme.tilt_text, theme.good,
                               theme.tight, theme.bad, theme.unknown, theme.focus})
      EXPECT_GE(contrast_ratio(text, theme.card), 7.0) << text.name().toStdString();
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
