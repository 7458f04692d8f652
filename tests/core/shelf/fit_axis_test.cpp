#include "core/shelf/fit_axis.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/units/angle.h"
#include "tests/core/motion/small_axis.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

constexpr double kAngle_rad = 90 * kDegree_rad, kAcceleration_radps2 = 2000 * kDegree_rad;
constexpr double kMove_s = 0.424264;  // 2·√(θ/α)

/// A flywheel of 2 kg·m², a quarter of it the rotor's, whose motor gives it the acceleration at any
/// speed.
FitCandidate even_candidate() {
  FitCandidate c;
  c.model = tests::flywheel();
  c.model.drive.current_limit_A = 2 * kAcceleration_radps2 / c.model.drive.torque_constant_NmpA;
  c.move_rad = kAngle_rad;
  return c;
}

double demand(const FitCandidate& c, FitLimit limit) {
  return axis_fit(c, c.model.load).demand[static_cast<std::size_t>(limit)];
}

// Source: Siciliano et al., Robotics: Modelling, Planning and Control, Springer 2009, 4.2.1 (from
// memory): a trapezoid of speed takes t = θ/ω + ω/α, a triangle 2·√(θ/α). The part r of the peak is
// taken from a move whose time and peak are exact to 2.4e-6 (rigid_move_test.cpp: 1e-6 s of 0.42 s,
// 1e-3 °/s of 424 °/s), and the time is off by no more than both of these together: 5e-6.
TEST(FitAxis, AHeldSpeedMakesATrapezoidOfTheTriangle) {
  FitCandidate c = even_candidate();
  EXPECT_NEAR(axis_fit(c, c.model.load).time_s, kMove_s, tol(1e-6));
  for (const double held_degps : {400.0, 300.0, 150.0, 40.0}) {
    c.fastest_radps = held_degps * kDegree_rad;
    const double time_s = kAngle_rad / c.fastest_radps + c.fastest_radps / kAcceleration_radps2;
    EXPECT_NEAR(axis_fit(c, c.model.load).time_s, time_s, tol(5e-6 * time_s)) << held_degps;
  }
}

TEST(FitAxis, ASpeedThatIsHeldAboveThePeakChangesNothing) {
  FitCandidate c = even_candidate();
  const double free_s = axis_fit(c, c.model.load).time_s;
  c.fastest_radps = 430 * kDegree_rad;
  EXPECT_EQ(axis_fit(c, c.model.load).time_s, free_s);
}

// Newton: the gearbox carries what speeds the load up, 1.5 of the 2 kg·m²; over as long a rest its
// root mean square is 1/√2 of that. The share of the time is exact to 1e-6 s of 0.42 s.
TEST(FitAxis, TheGearboxCarriesTheLoadsPartOfTheTorque) {
  FitCandidate c = even_candidate();
  c.dwell_s = kMove_s;
  const double torque_Nm = 1.5 * kAcceleration_radps2 / std::sqrt(2.0);
  EXPECT_NEAR(demand(c, FitLimit::rated), torque_Nm, tol(5e-6 * torque_Nm));
}

// The steady rise is where the heat that the warm winding makes flows off over it:
// ΔT = R_th·1.5·R_20·(1 + α·(T_air + ΔT − 20 °C))·i² with copper's α = 1/(235 + 20) per kelvin.
// Source of α: IEC 60034-1, resistance method (from memory).
TEST(FitAxis, TheWindingsRiseIsInBalanceWithItsOwnHeat) {
  FitCandidate c = even_candidate();
  c.current_A = 10;
  c.thermal_resistance_KpW = 5;
  c.air_K = 298.15;
  const double cold_W = 1.5 * c.model.drive.phase_resistance_ohm * 10 * 10;
  const double rise_K = demand(c, FitLimit::heat);
  EXPECT_GT(rise_K, 5 * cold_W);
  EXPECT_NEAR(rise_K, 5 * cold_W * (1 + (5 + rise_K) / 255), tol(1e-9));
  c.current_A = 30;  // 5 K/W · 83.7 W / 255 K is more than 1: it never settles
  EXPECT_EQ(demand(c, FitLimit::heat), kInfinity);
}

}  // namespace
}  // namespace gazewright
