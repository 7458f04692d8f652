#include <gtest/gtest.h>

#include "core/bodies/bodies.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::Random;

Body body_at(double mass_kg, const Eigen::Vector3d& centre_m, Shape shape) {
  return {"",
          si_quantity(mass_kg),
          {si_quantity(centre_m.x()), si_quantity(centre_m.y()), si_quantity(centre_m.z())},
          std::move(shape)};
}

Shape box(double x_m, double y_m, double z_m) {
  return Box{{si_quantity(x_m), si_quantity(y_m), si_quantity(z_m)}};
}

TEST(Inertia, OfATensorEntryKeepsEveryElementInItsPlaceWithItsSign) {
  Tensor tensor;
  const double given[] = {5, 6, 7, -0.1, 0.2, -0.3};  // xx, yy, zz, xy, xz, yz
  for (int i = 0; i < 6; ++i) tensor.element_kgm2[i] = si_quantity(given[i]);
  Eigen::Matrix3d expected;
  expected << 5, -0.1, 0.2, -0.1, 6, -0.3, 0.2, -0.3, 7;
  EXPECT_EQ(inertia_about_centre_kgm2(tensor, 123), expected);  // its mass does not enter
}

TEST(Inertia, OfATubeFollowsItsAxis) {
  const auto tube = [](const char* along) {
    return inertia_about_centre_kgm2(
        Tube{{along}, si_quantity(0.2), si_quantity(0.1), si_quantity(0.5)}, 3);
  };
  const Eigen::Vector3d along_z = tube("z").diagonal();
  EXPECT_NE(along_z(0), along_z(2));
  EXPECT_EQ(tube("x").diagonal(), Eigen::Vector3d(along_z(2), along_z(0), along_z(0)));
  EXPECT_EQ(tube("y").diagonal(), Eigen::Vector3d(along_z(0), along_z(2), along_z(0)));
}

TEST(Inertia, OfATubeIsThatOfTheRodLessThatOfItsBore) {
  const double outer_m = 0.2, bore_m = 0.15, length_m = 0.4, rod_kg = 4;
  const double bore_kg = rod_kg * bore_m * bore_m / (outer_m * outer_m);
  const auto rod = [&](double diameter_m, double mass_kg) {
    return inertia_about_centre_kgm2(
        Tube{{"y"}, si_quantity(diameter_m), si_quantity(0), si_quantity(length_m)}, mass_kg);
  };
  const Eigen::Matrix3d tube = inertia_about_centre_kgm2(
      Tube{{"y"}, si_quantity(outer_m), si_quantity(bore_m), si_quantity(length_m)},
      rod_kg - bore_kg);
  // A dozen roundings of 1e-16 on 0.06 kg·m².
  EXPECT_LE((tube - (rod(outer_m, rod_kg) - rod(bore_m, bore_kg))).norm(), tol(1e-16));
}

TEST(Inertia, OfAShellWithAWallUpToItsCentreIsThatOfABall) {
  const Eigen::Matrix3d ball = inertia_about_centre_kgm2(Ball{si_quantity(0.3)}, 2);
  const Eigen::Matrix3d shell =
      inertia_about_centre_kgm2(Shell{si_quantity(0.3), si_quantity(0.15)}, 2);
  EXPECT_LE((ball - shell).norm(), tol(1e-17));  // rounding of 0.018 kg·m²
}

TEST(Inertia, OfAVeryThinShellLosesNoDigits) {
  // Thin shell: (2/3)m R²; a wall w takes (1 − w/R) off to first order, so at w/R = 1e-9 the two
  // agree within 2e-9.
  const double radius_m = 0.06, mass_kg = 0.16;
  const double thin = 2.0 / 3 * mass_kg * radius_m * radius_m;
  const double shell = inertia_about_centre_kgm2(
      Shell{si_quantity(2 * radius_m), si_quantity(1e-9 * radius_m)}, mass_kg)(0, 0);
  EXPECT_NEAR(shell / thin, 1 - 1e-9, tol(1e-15));
}

TEST(Combined, EightSmallBoxesMakeTheLargeOne) {
  std::vector<Body> eighths;
  for (int x = -1; x <= 1; x += 2)
    for (int y = -1; y <= 1; y += 2)
      for (int z = -1; z <= 1; z += 2)
        eighths.push_back(
            body_at(0.25, {2 + 0.1 * x, 3 + 0.2 * y, 5 + 0.3 * z}, box(0.2, 0.4, 0.6)));
  const MassProperties parts = combined(eighths);
  const MassProperties whole = combined({body_at(2, {2, 3, 5}, box(0.4, 0.8, 1.2))});
  EXPECT_NEAR(parts.mass_kg, 2, tol(1e-15));
  EXPECT_LE((parts.p_OC_m - whole.p_OC_m).norm(), tol(4e-15));      // rounding of 6 m
  EXPECT_LE((parts.I_O_kgm2 - whole.I_O_kgm2).norm(), tol(2e-13));  // rounding of 76 kg·m²
}

TEST(Combined, AWholeGroupMovedKeepsItsInertiaAboutItsOwnCentre) {
  Random random(71);
  double worst = 0;
  for (int round = 0; round < 200; ++round) {
    Rig rig = tests::random_bodies_rig(random);
    const MassProperties before = combined(rig.on_tilt);
    const double size_m = rig.on_tilt[0].centre_m[0].value();
    for (Body& body : rig.on_tilt) *body.centre_m[1].si += 3 * size_m;
    const MassProperties after = combined(rig.on_tilt);
    const auto about_centre = [](const MassProperties& p) -> Eigen::Matrix3d {
      return p.I_O_kgm2 - p.mass_kg * (p.p_OC_m.squaredNorm() * Eigen::Matrix3d::Identity() -
                                       p.p_OC_m * p.p_OC_m.transpose());
    };
    worst = std::max(worst, (about_centre(before) - about_centre(after)).norm() /
                                (before.I_O_kgm2.norm() + after.I_O_kgm2.norm()));
    EXPECT_TRUE(is_possible_inertia(about_centre(before)));
  }
  EXPECT_LE(worst, tol(2e-15));  // differences of like numbers: about ten roundings of 1.1e-16
}

TEST(Combined, NothingWeighsNothingAndHasNoInertia) {
  const MassProperties none = combined(std::vector<Body>());
  EXPECT_EQ(none.mass_kg, 0);
  EXPECT_EQ(none.p_OC_m, Eigen::Vector3d::Zero());
  EXPECT_EQ(none.I_O_kgm2, Eigen::Matrix3d::Zero());
}

TEST(PossibleInertia, HoldsForEveryShapeAndForPointRodAndPlate) {
  Random random(72);
  for (int round = 0; round < 500; ++round) {
    const double mass_kg = random.log_uniform(1e-3, 1e2), size_m = random.log_uniform(1e-3, 2);
    EXPECT_TRUE(is_possible_inertia(
        inertia_about_centre_kgm2(tests::random_shape(random, mass_kg, size_m), mass_kg)));
  }
  EXPECT_TRUE(is_possible_inertia(Eigen::Matrix3d::Zero()));
  EXPECT_TRUE(is_possible_inertia(Eigen::Vector3d(0, 1, 1).asDiagonal()));
  EXPECT_TRUE(is_possible_inertia(Eigen::Vector3d(1, 2, 3).asDiagonal()));
  // A plate whose moments were rounded to three digits.
  EXPECT_TRUE(is_possible_inertia(Eigen::Vector3d(1.23, 2.34, 3.573).asDiagonal()));
}

TEST(PossibleInertia, FailsWhereNoBodyCouldHaveIt) {
  EXPECT_FALSE(is_possible_inertia(Eigen::Vector3d(1, 1, 2.1).asDiagonal()));
  EXPECT_FALSE(is_possible_inertia(Eigen::Vector3d(-1e-6, 1, 1).asDiagonal()));
  Eigen::Matrix3d products = Eigen::Matrix3d::Identity();
  products(0, 1) = products(1, 0) = 1.5;  // principal moments 2.5, −0.5, 1
  EXPECT_FALSE(is_possible_inertia(products));
  products(0, 1) = products(1, 0) = std::nan("");
  EXPECT_FALSE(is_possible_inertia(products));
}

}  // namespace
}  // namespace gazewright
