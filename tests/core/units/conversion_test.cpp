// Conversion factors against published ones. Sources: the SI Brochure, 9th edition (2019), and
// NIST Special Publication 811 (2008), appendix B.8 and B.9; both give the factors below, marked
// exact or with as many digits as are written here.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/rig/fields.h"
#include "core/units/units.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using std::numbers::pi;

struct Published {
  const char *unit, *si_unit;
  double factor;
  double digits = 1e-12;  ///< relative: 1e-12 for exact factors, half a last digit for rounded ones
};

TEST(UnitFactors, AreThePublishedOnes) {
  constexpr Published kFactors[]{
      // Exact: SI Brochure, table 8 (minute, degree, arcmin) and 7 (prefixes).
      {"min", "s", 60},
      {"h", "s", 3600},
      {"deg", "rad", pi / 180},
      {"mdeg", "rad", pi / 180e3},
      {"arcmin", "rad", pi / 10800},
      {"arcsec", "rad", pi / 648000},
      {"mohm", "ohm", 1e-3},
      {"uH", "H", 1e-6},
      {"mF", "F", 1e-3},
      {"kHz", "Hz", 1e3},
      {"g.cm2", "kg.m2", 1e-7},
      {"gcm2", "kg.m2", 1e-7},
      {"kg.mm2", "kg.m2", 1e-6},
      {"%", "1", 0.01},
      // Exact: NIST SP 811, B.8: inch, pound, pound-force, kilogram-force, turn.
      {"in", "m", 0.0254},
      {"ft", "m", 0.3048},
      {"lb", "kg", 0.45359237},
      {"oz", "kg", 0.028349523125},
      {"kgf.cm", "N.m", 0.0980665},
      {"kg.cm", "N.m", 0.0980665},
      {"kgcm", "N.m", 0.0980665},
      {"g.cm", "N.m", 9.80665e-5},
      {"Nm", "N.m", 1},
      {"mNm", "N.m", 1e-3},
      {"Ncm", "N.m", 1e-2},
      {"Nmm", "N.m", 1e-3},
      {"uNms/rad", "N.m.s/rad", 1e-6},
      {"turn", "rad", 2 * pi},
      {"rev", "rad", 2 * pi},
      {"rpm", "rad/s", 2 * pi / 60},
      {"rpm/V", "rad/s/V", 2 * pi / 60},
      {"KV", "rad/s/V", 2 * pi / 60},
      {"N.m/deg", "N.m/rad", 180 / pi},
      {"N.m/rpm", "N.m.s/rad", 60 / (2 * pi)},
      {"deg/m", "rad/m", pi / 180},
      // Rounded: NIST SP 811, B.8, ounce-force inch 7.061 552 E-03, pound-force inch 1.129 848
      // E-01,
      // pound-force foot 1.355 818 E+00, revolution per minute 1.047 198 E-01, ounce (avoirdupois)
      // inch squared from 2.834 952 E-02 and 2.54 E-02.
      {"ozf.in", "N.m", 7.061552e-3, 1e-7},
      {"oz.in", "N.m", 7.061552e-3, 1e-7},
      {"lbf.in", "N.m", 0.1129848, 5e-7},
      {"lbf.ft", "N.m", 1.355818, 5e-7},
      {"rpm", "rad/s", 0.1047198, 5e-7},
      {"oz.in2", "kg.m2", 2.834952e-2 * 2.54e-2 * 2.54e-2, 5e-7},
  };
  for (const Published& unit : kFactors)
    EXPECT_NEAR(to_si(1, unit.si_unit, unit.unit) / unit.factor, 1, tol(unit.digits))
        << unit.unit << " in " << unit.si_unit;
}

TEST(UnitFactors, OfTheOunceForceInchFollowFromPoundInchAndStandardGravity) {
  // 1 lb = 0.45359237 kg, 1 in = 25.4 mm, g = 9.80665 m/s², all exact (NIST SP 811, B.6 footnotes).
  const double ounce_force_inch_Nm = 0.45359237 / 16 * 9.80665 * 0.0254;
  EXPECT_NEAR(to_si(1, "N.m", "ozf.in") / ounce_force_inch_Nm, 1, tol(1e-12));
}

TEST(Temperatures, HaveTheirZeroWhereItBelongs) {
  // SI Brochure, 2.3.1: t/degC = T/K - 273.15, exact; NIST SP 811, B.8: T/K = (t/degF +
  // 459.67)/1.8.
  EXPECT_NEAR(to_si(30, "K", "degC"), 303.15, tol(1e-12 * 303.15));
  EXPECT_NEAR(to_si(86, "K", "degF"), 303.15, tol(1e-11));
  EXPECT_NEAR(from_si(303.15, "K", "degC"), 30, tol(1e-12 * 303.15));
  EXPECT_DOUBLE_EQ(to_si(4.1, "K/W", "degC/W"), 4.1);  // a difference has no zero
}

TEST(WireGauge, IsTheTableOfTheStandard) {
  // ASTM B258, table 1, diameters in mm as printed there to three or four digits (from memory).
  EXPECT_NEAR(to_si(36, "m", "AWG"), 0.127e-3, tol(1e-15));
  EXPECT_NEAR(to_si(20, "m", "AWG"), 0.812e-3, tol(0.5e-6));
  EXPECT_NEAR(to_si(10, "m", "AWG"), 2.588e-3, tol(0.5e-6));
  EXPECT_NEAR(from_si(to_si(28, "m", "AWG"), "m", "AWG"), 28, tol(1e-12 * 28));
}

TEST(Conversion, ThereAndBackGivesTheSameAtEveryScale) {
  Rig rig;
  for (const FieldRef& field : all_fields(rig)) {
    const auto* ref = std::get_if<QuantityRef>(&field);
    if (ref == nullptr || ref->info->unit == "px" || ref->info->si_unit == "K") continue;
    for (double value = 1e-9; value < 1e10; value *= 37)
      EXPECT_NEAR(from_si(to_si(value, ref->info->si_unit, ref->info->unit), ref->info->si_unit,
                          ref->info->unit) /
                      value,
                  1, tol(4e-16))
          << ref->path;
  }
}

}  // namespace
}  // namespace gazewright
