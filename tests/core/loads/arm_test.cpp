#include "core/loads/arm.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/bodies/bodies.h"
#include "core/loads/beam.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

ArmBeam small_arm() {
  ArmBeam arm;
  arm.length_m = 0.15;
  arm.section = {0.04, 0.014, 0.0024, 0.25};
  arm.values = values_of(arm.section);
  arm.modulus_Pa = 1.9e9;
  arm.density_kgpm3 = 1270;
  arm.aside_m = 0.065;
  return arm;
}
MassProperties point_load(double mass_kg, const Eigen::Vector3d& p_m) {
  MassProperties load;
  load.mass_kg = mass_kg;
  load.p_OC_m = p_m;
  load.I_O_kgm2 =
      mass_kg * (p_m.squaredNorm() * Eigen::Matrix3d::Identity() - p_m * p_m.transpose());
  return load;
}

double first_Hz(const ArmBeam& arm, const MassProperties& load) {
  return modes_of(arm, load, {0, 0, 0}).first_Hz;
}

TEST(Sections, ABoxIsItsOutsideLessItsInsideAndWeighsItsFilling) {
  const SectionValues box = values_of({0.04, 0.02, 0.003, 0});
  EXPECT_NEAR(box.area_m2, 0.04 * 0.02 - 0.034 * 0.014, tol(1e-18));
  EXPECT_NEAR(box.height_m4, (0.04 * std::pow(0.02, 3) - 0.034 * std::pow(0.014, 3)) / 12,
              tol(1e-21));
  EXPECT_NEAR(box.width_m4, (0.02 * std::pow(0.04, 3) - 0.014 * std::pow(0.034, 3)) / 12,
              tol(1e-21));
  const SectionValues filled = values_of({0.04, 0.02, 0.003, 0.2});
  EXPECT_NEAR(filled.weight_area_m2 - box.weight_area_m2, 0.2 * 0.034 * 0.014, tol(1e-18));
  EXPECT_NEAR(filled.area_m2 - box.area_m2, 0.04 * 0.034 * 0.014, tol(1e-18)) << "0.2² = 0.04";
}

TEST(Sections, AFullBoxIsABar) {
  const SectionValues bar = values_of({0.04, 0.02}), thick = values_of({0.04, 0.02, 0.01}),
                      full = values_of({0.04, 0.02, 0.003, 1});
  for (const SectionValues& same : {thick, full}) {
    EXPECT_DOUBLE_EQ(same.area_m2, bar.area_m2);
    EXPECT_NEAR(same.width_m4, bar.width_m4, tol(1e-20));
    EXPECT_NEAR(same.height_m4, bar.height_m4, tol(1e-20));
  }
  EXPECT_DOUBLE_EQ(thick.torsion_m4, bar.torsion_m4);
  EXPECT_NEAR(values_of({0.04, 0.02, 0, 0.5}).height_m4, bar.height_m4 / 4, tol(1e-20));
}

TEST(Sections, AThinTubeTwistsAsBredtSays) {
  // Square of 37 mm along the middle of its wall of 3 mm: 4·37⁴·3/(4·37) = 3·37³ mm⁴.
  EXPECT_NEAR(values_of({0.040, 0.040, 0.003}).torsion_m4, 3e-12 * std::pow(37, 3), tol(1e-18));
}

TEST(ArmDroop, OfASingleArmIsAMomentAtACantileversEnd) {
  const ArmBeam arm = small_arm();
  const MassProperties load = point_load(0.5, {0, -0.065, 0});
  const double EI = arm.modulus_Pa * arm.values.height_m4, M = 0.5 * kStandardGravity_mps2 * 0.065;
  const ArmDroop droop = droop_of(arm, load, 0);
  EXPECT_NEAR(droop.angle_rad, M * 0.15 / EI, tol(1e-12));
  EXPECT_NEAR(droop.sideways_m, M * 0.15 * 0.15 / (2 * EI), tol(1e-12));
  EXPECT_NEAR(droop.sink_m,
              droop.angle_rad * 0.065 +
                  0.5 * kStandardGravity_mps2 * 0.15 / (arm.modulus_Pa * arm.values.area_m2),
              tol(1e-12));
}

TEST(ArmDroop, AForkInTheMiddleKeepsItsAxisLevelAndSinksAHundredthAsMuch) {
  ArmBeam fork = small_arm();
  const ArmDroop side = droop_of(fork, point_load(0.5, {0, -0.065, 0}), 0);
  fork.is_fork = true;
  const ArmDroop both = droop_of(fork, point_load(0.5, {0, 0, 0}), 0);
  EXPECT_EQ(both.angle_rad, 0);
  EXPECT_LT(both.sink_m, side.sink_m / 100);
  EXPECT_GT(both.sink_m, 0);
  // Off the middle by b, one arm carries all: its end sinks by all of m·g·L/EA, the middle by half.
  const ArmDroop off = droop_of(fork, point_load(0.5, {0, fork.aside_m, 0}), 0);
  EXPECT_NEAR(off.sink_m, 2 * both.sink_m, tol(1e-15));
}

TEST(ArmDroop, ALeaningArmIsACantileverUnderAForceAtItsEnd) {
  const ArmBeam arm = small_arm();
  const MassProperties load = point_load(0.5, {0, 0, 0});
  const double lean = 0.2, EI = arm.modulus_Pa * arm.values.height_m4;
  const double F = 0.5 * kStandardGravity_mps2 * std::sin(lean);
  const double own = arm.arm_kg() * kStandardGravity_mps2 * std::sin(lean);
  EXPECT_NEAR(droop_of(arm, load, lean).sideways_m, (F / 3 + own / 8) * std::pow(0.15, 3) / EI,
              tol(1e-12));
  EXPECT_NEAR(droop_of(arm, load, -lean).angle_rad, (F / 2 + own / 6) * 0.15 * 0.15 / EI,
              tol(1e-12));
}

TEST(ArmModes, AHeavyPointSwingsAsRayleighSays) {
  // The cubic of a light beam is exact: the two differ by (arm/load)² only, 1e-4 here.
  const ArmBeam arm = small_arm();
  const MassProperties load = point_load(100 * arm.arm_kg(), {0, 0, 0});
  const double rayleigh =
      bending_frequency_Hz(arm.modulus_Pa * arm.values.height_m4, 0.15, load.mass_kg, arm.arm_kg());
  EXPECT_NEAR(first_Hz(arm, load) / rayleigh, 1, tol(1e-4));
}

TEST(ArmModes, ALoadThatOnlyTwistsTheArmSwingsAsATorsionPendulum) {
  ArmBeam arm = small_arm();
  MassProperties load = point_load(1e-3, {0, 0, 0});
  load.I_O_kgm2.diagonal() << 1e-9, 1e-9, 4e-3;
  const double w = arm.section.width_m, h = arm.section.height_m;
  EXPECT_NEAR(first_Hz(arm, load),
              torsion_frequency_Hz(arm.shear_modulus_Pa() * arm.values.torsion_m4, 0.15, 4e-3,
                                   arm.arm_kg() * (w * w + h * h) / 12),
              tol(1e-9 * 50));
}

TEST(ArmModes, ABareArmIsWithinOnePercentOfTheExactBeam) {
  ArmBeam arm = small_arm();
  const double exact =
      std::pow(1.8751040687, 2) / (2 * std::numbers::pi) *
      std::sqrt(arm.modulus_Pa * arm.values.height_m4 / (arm.arm_kg() * std::pow(arm.length_m, 3)));
  // One element of cubic shape: 0.5 % too high (3.533 against 3.516, finite-element texts).
  EXPECT_NEAR(first_Hz(arm, point_load(0, {0, 0, 0})) / exact, 3.533 / 3.516, tol(1e-3));
}

TEST(ArmModes, AForkSwaysAlongItsAxisAsTwoHingedCantilevers) {
  // Along the tilt axis: two hinged cantilevers, in parallel.
  ArmBeam fork = small_arm();
  fork.is_fork = true;
  const MassProperties load = point_load(2, {0, 0, 0});
  const double two =
      bending_frequency_Hz(2 * fork.modulus_Pa * fork.values.height_m4, 0.15, 2, fork.mass_kg());
  EXPECT_NEAR(first_Hz(fork, load) / two, 1, tol(1e-9));
}

TEST(ArmModes, AnAxisIsShakenByTheModesThatTurnAboutIt) {
  // Along its axis a fork of thin plates is softest; neither drive pushes that way.
  ArmBeam fork = small_arm();
  fork.is_fork = true;
  fork.section = {0.04, 0.004};
  fork.values = values_of(fork.section);
  MassProperties load = point_load(0.5, {0, 0, 0});
  load.I_O_kgm2.diagonal() << 4e-4, 4e-4, 4e-4;
  const ArmModes modes = modes_of(fork, load, {0, 0, 0.2});
  const double across =
      bending_frequency_Hz(2 * fork.modulus_Pa * fork.values.height_m4, 0.15, 0.5, fork.mass_kg());
  EXPECT_NEAR(modes.first_Hz / across, 1, tol(1e-9));
  EXPECT_GT(modes.tilt_Hz, 2 * modes.first_Hz);
  // Rayleigh: yaw alone, pitch held: 12EI/L³ of the driven arm and 3EI/L³ of the other one at b. No
  // shape swings slower than the mode itself.
  const double EI = fork.modulus_Pa * fork.values.width_m4, b = fork.aside_m;
  const double k = 15 * EI / std::pow(0.15, 3) * b * b;
  const double J = 4e-4 + (156.0 / 420 + kSwingingShare) * fork.arm_kg() * b * b;
  EXPECT_LT(modes.pan_Hz, std::sqrt(k / J) / (2 * std::numbers::pi));
  EXPECT_GT(modes.pan_Hz, modes.first_Hz);
}

TEST(ArmStrength, AtRestASingleArmBearsPullAndTheMomentOfTheOverhang) {
  const ArmBeam arm = small_arm();
  const double weight = 0.5 * kStandardGravity_mps2;
  const double expected =
      weight * 0.065 * 0.007 / arm.values.height_m4 + weight / arm.values.area_m2;
  EXPECT_NEAR(root_stress_Pa(arm, weight_forces(point_load(0.5, {0, -0.065, 0}), 0)), expected,
              tol(1e-3));
}

TEST(ArmStrength, APanAccelerationPushesThePointAndTwistsTheArm) {
  // A point over the pan axis, the arm 65 mm beside it: the point itself is only turned.
  const MassProperties middle = point_load(0.5, {0, -0.065, 0});
  const EndForces still = inertia_forces(middle, {0, -0.065, 0}, {0, 0, 300});
  EXPECT_NEAR(still.force_N.norm(), 0, tol(1e-12));
  EXPECT_NEAR(still.moment_Nm.norm(), 0, tol(1e-12));
  // 40 mm in front of it: 0.5·0.04·300 = 6 N backwards in y; about the end no moment but 6 N·40 mm.
  const EndForces front =
      inertia_forces(point_load(0.5, {0.04, -0.065, 0}), {0, -0.065, 0}, {0, 0, 300});
  EXPECT_NEAR(front.force_N.y(), 6, tol(1e-12));
  EXPECT_NEAR(front.moment_Nm.z(), 6 * 0.04, tol(1e-12));
  EXPECT_NEAR(front.force_N.x(), 0, tol(1e-12));
}

TEST(ArmStrength, GrowsWithTheForceAndAForkHalvesIt) {
  ArmBeam arm = small_arm();
  const EndForces push{{0, 10, 0}, {0, 0, 0}};
  const double one = root_stress_Pa(arm, push);
  EXPECT_NEAR(one, 10 * 0.15 * 0.007 / arm.values.height_m4, tol(1e-3));
  arm.is_fork = true;
  EXPECT_NEAR(root_stress_Pa(arm, push), one / 2, tol(1e-3));
}

TEST(ArmModes, RandomArmsAreFiniteAndAHeavierLoadSwingsSlower) {
  tests::Random random(1907);
  for (int i = 0; i < 300; ++i) {
    ArmBeam arm;
    arm.is_fork = random.chance(0.5);
    arm.length_m = random.log_uniform(0.02, 2);
    const double side = random.log_uniform(0.003, 0.2);
    arm.section = {side, side * random.log_uniform(0.2, 5), side * random.uniform(0, 0.2),
                   random.uniform(0, 1)};
    arm.values = values_of(arm.section);
    arm.modulus_Pa = random.log_uniform(1e9, 2e11);
    arm.density_kgpm3 = random.log_uniform(1000, 8000);
    arm.aside_m = random.log_uniform(0.01, 1);
    const double mass = random.log_uniform(0.01, 20);
    const Eigen::Vector3d at(random.uniform(-0.1, 0.1), random.uniform(-0.1, 0.1),
                             random.uniform(-0.1, 0.1));
    const MassProperties light = point_load(mass, at), heavy = point_load(2 * mass, at);
    const double mode = first_Hz(arm, light);
    ASSERT_TRUE(std::isfinite(mode) && mode > 0) << i;
    EXPECT_LT(first_Hz(arm, heavy), mode) << i;
    EXPECT_GE(droop_of(arm, heavy, 0.1).sink_m, droop_of(arm, light, 0.1).sink_m) << i;
    // Twice the modulus: √2 in frequency, half the droop.
    ArmBeam stiff = arm;
    stiff.modulus_Pa *= 2;
    EXPECT_NEAR(first_Hz(stiff, light) / mode, std::sqrt(2.0), tol(1e-7)) << i;
    EXPECT_NEAR(droop_of(stiff, light, 0.1).sideways_m / droop_of(arm, light, 0.1).sideways_m, 0.5,
                tol(1e-12));
  }
}

}  // namespace
}  // namespace gazewright
