#include <gtest/gtest.h>

#include <QLocale>
#include <limits>

#include "app/plots/format.h"

namespace gazewright {
namespace {

const QString kSpace(QChar(0x202F));

class Format : public testing::Test {
 protected:
  void SetUp() override { QLocale::setDefault(QLocale::c()); }
  void TearDown() override { QLocale::setDefault(QLocale::system()); }
};

TEST_F(Format, ShowsThreeDigitsAndANarrowSpaceBeforeTheUnit) {
  EXPECT_EQ(format_value(0.1484, "s", "ms"), "148" + kSpace + "ms");
  EXPECT_EQ(format_value(0.00588, "kg.m2", "g.m2"), "5.88" + kSpace + "g·m²");
}

TEST_F(Format, PutsNoSpaceBeforeTheDegreeSignAndUsesATrueMinus) {
  EXPECT_EQ(format_value(-0.2181661565, "rad", "deg"), "−12.5°");
}

TEST_F(Format, ChangesThePrefixWhereThatReadsBetter) {
  EXPECT_EQ(format_value(0.0021, "N.m", "N.m"), "2.1" + kSpace + "mN·m");
  EXPECT_EQ(format_value(12.5, "s", "ms"), "12.5" + kSpace + "s");
  EXPECT_EQ(format_value(2 * 3.14159265358979 * 12e3, "rad/s", "Hz"), "12" + kSpace + "kHz");
}

TEST_F(Format, SaysNoneForInfinityAndADashForWhatIsMissing) {
  EXPECT_EQ(format_value(std::numeric_limits<double>::infinity(), "A", "A"), "none");
  EXPECT_EQ(format_value(std::numeric_limits<double>::quiet_NaN(), "A", "A"), "–");
  EXPECT_EQ(format_value(std::optional<double>(), "A", "A"), "–");
}

TEST_F(Format, FollowsTheLocalesDecimalSign) {
  QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
  EXPECT_EQ(format_value(0.0125, "m", "mm"), "12,5" + kSpace + "mm");
}

TEST_F(Format, NeverShowsMinusZeroAndWritesTinyNumbersAsPowers) {
  EXPECT_EQ(number_text(-0.0), "0");
  EXPECT_EQ(number_text(0.0000125), "1.25×10⁻⁵");
}

TEST_F(Format, SignsMargins) {
  EXPECT_EQ(margin_text(0.081), "+8" + kSpace + "%");
  EXPECT_EQ(margin_text(-0.25), "−25" + kSpace + "%");
  EXPECT_EQ(margin_text({}), "–");
  EXPECT_EQ(margin_text(170.0), "> 999" + kSpace + "%");
}

}  // namespace
}  // namespace gazewright
