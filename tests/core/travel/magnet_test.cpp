#include "core/travel/magnet.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/units/angle.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using Eigen::Vector3d;
constexpr DiscMagnet kMagnet{.diameter_m = 6e-3, .thickness_m = 2.5e-3, .remanence_T = 1.2};

/// Coulomb's law for the charge M·cosφ on the rim, patch by patch.
Vector3d field_of_patches_T(const DiscMagnet& magnet, const Vector3d& p_FP_m) {
  constexpr int kRound = 400, kHigh = 400;
  const double radius = magnet.diameter_m / 2;
  Vector3d sum = Vector3d::Zero();
  for (int i = 0; i < kRound; ++i) {
    const double angle = 2 * kPi * (i + 0.5) / kRound;
    for (int j = 0; j < kHigh; ++j) {
      const Vector3d patch(radius * std::cos(angle), radius * std::sin(angle),
                           -magnet.thickness_m * (j + 0.5) / kHigh);
      const Vector3d off = p_FP_m - patch;
      sum += std::cos(angle) / std::pow(off.norm(), 3) * off;
    }
  }
  const double area = 2 * kPi * radius * magnet.thickness_m / (kRound * kHigh);
  return magnet.remanence_T / (4 * kPi) * area * sum;
}

TEST(MagnetField, IsThatOfTheChargeOnItsRim) {
  // Midpoint rule over the height: relative error h²/24·f''/f ~ (6e-6)²/24·20/(1e-3)² = 3e-5.
  for (const Vector3d& place : {Vector3d(0, 0, 1e-3), Vector3d(0.4e-3, 0, 1e-3),
                                Vector3d(0.3e-3, -0.5e-3, 2e-3), Vector3d(-1e-3, 0.7e-3, 0.8e-3)}) {
    const Vector3d expected = field_of_patches_T(kMagnet, place);
    const Vector3d field = magnet_field_T(kMagnet, place);
    for (int k = 0; k < 3; ++k)
      EXPECT_NEAR(field[k], expected[k], tol(3e-5 * expected.norm())) << place.transpose() << k;
  }
}

TEST(MagnetField, OnTheAxisHasItsClosedForm) {
  for (const double gap : {0.2e-3, 1e-3, 3e-3, 20e-3}) {
    const Vector3d field = magnet_field_T(kMagnet, {0, 0, gap});
    EXPECT_NEAR(-field.x(), magnet_axis_field_T(kMagnet, gap), tol(1e-15)) << gap;
    EXPECT_NEAR(field.y(), 0, tol(1e-15));
    EXPECT_NEAR(field.z(), 0, tol(1e-15));
  }
}

TEST(MagnetField, FarOffIsThatOfADipole) {
  // B = μ₀·m/(4π·r³) across the dipole, m = Br·V/μ₀, r from the magnet's middle; any text on
  // magnetostatics. Next term of the series: (size/r)² ~ 1e-4.
  const double far = 0.5, from_face = far - kMagnet.thickness_m / 2;
  const double volume = kPi / 4 * 36e-6 * 2.5e-3;
  const double dipole = 1.2 * volume / (4 * kPi * std::pow(far, 3));
  EXPECT_NEAR(magnet_axis_field_T(kMagnet, from_face), dipole, tol(1e-4 * dipole));
}

TEST(MagnetField, HasNeitherSourcesNorCurls) {
  const Vector3d at(0.3e-3, 0.5e-3, 1.2e-3);
  const double h = 1e-6;
  Eigen::Matrix3d slope;
  for (int k = 0; k < 3; ++k)
    slope.col(k) = (magnet_field_T(kMagnet, at + h * Vector3d::Unit(k)) -
                    magnet_field_T(kMagnet, at - h * Vector3d::Unit(k))) /
                   (2 * h);
  // Central difference: truncation h²/6·f''' ~ 1e-12/6·0.1/1e-9 = 2e-5, slopes of 30 T/m.
  EXPECT_NEAR(slope.trace(), 0, tol(1e-3));
  EXPECT_NEAR((slope - slope.transpose()).norm(), 0, tol(1e-3));
}

TEST(MagnetError, OfATiltedSensorIsThatOfAProjectedCircle) {
  // atan(tanα/cosτ) − α is largest where tanα = √cosτ: asin((1 − cosτ)/(1 + cosτ)).
  for (const double tilt : {0.02, 0.1, 0.4}) {
    const double expected = std::asin((1 - std::cos(tilt)) / (1 + std::cos(tilt)));
    // 48 directions miss the peak of a wave of two per turn by at most 1 − cos(7.5°) = 0.9 %.
    EXPECT_NEAR(magnet_angle_error_rad(kMagnet, 1e-3, 0, tilt), expected, tol(9e-3 * expected));
  }
  EXPECT_NEAR(magnet_angle_error_rad(kMagnet, 1e-3, 0, 0), 0, tol(1e-15));
}

TEST(MagnetError, OfAnOffsetFollowsFromTheCurvatureOfTheField) {
  // Bx = B·(1 + b·y² + …) and, without curl, By = 2b·B·xy: a direction off by b·e²·sin 2β.
  const double gap = 1e-3, h = 2e-5;
  const auto across = [&](double y) { return magnet_field_T(kMagnet, {0, y, gap}).x(); };
  const double b = (across(h) - 2 * across(0) + across(-h)) / (2 * h * h * across(0));
  for (const double offset : {0.02e-3, 0.05e-3}) {
    const double expected = std::abs(b) * offset * offset;
    // Next order (e/R)² = 3e-4 relative, curvature's difference the like, peak missed by 0.9 %.
    EXPECT_NEAR(magnet_angle_error_rad(kMagnet, gap, offset, 0), expected, tol(1e-2 * expected));
  }
}

TEST(MagnetError, OfOffsetAndTiltTogetherHasAPartThatGoesWithBoth) {
  // A tilted plane sees Bz = s·B·x with s·B = ∂Bx/∂z: tilted across the offset e it takes the
  // reading off by s·e·τ/2 more, twice a turn like b·e² and τ²/4.
  const double gap = 2e-3, offset = 0.15e-3, tilt = 0.02618, h = 1e-5;
  const auto at = [&](const Vector3d& place) { return magnet_field_T(kMagnet, place).x(); };
  const double field = at({0, 0, gap});
  const double slope = (at({0, 0, gap + h}) - at({0, 0, gap - h})) / (2 * h) / field;
  const double curve = (at({0, h, gap}) - 2 * field + at({0, -h, gap})) / (2 * h * h) / field;
  const double together =
      std::abs(curve) * offset * offset + tilt * tilt / 4 + std::abs(slope) * offset * tilt / 2;
  // Fourth order and the peak missed by 0.9 %.
  EXPECT_NEAR(magnet_angle_error_rad(kMagnet, gap, offset, tilt), together, tol(0.02 * together));
}

TEST(MagnetError, GrowsWithOffsetAndTiltAndIsTheSameForAnySizeOfTheWhole) {
  std::mt19937 random(4);
  const auto between = [&](double a, double b) {
    return std::uniform_real_distribution(a, b)(random);
  };
  for (int i = 0; i < 200; ++i) {
    const double size = std::exp(between(std::log(1e-3), std::log(0.1)));
    const DiscMagnet magnet{size, size * between(0.2, 1), between(0.2, 1.4)};
    const double gap = size * between(0.1, 1), offset = size * between(0.001, 0.1);
    const double tilt = between(0, 0.3);
    const double error = magnet_angle_error_rad(magnet, gap, offset, tilt);
    ASSERT_TRUE(std::isfinite(error) && error > 0);
    EXPECT_GT(magnet_angle_error_rad(magnet, gap, 1.3 * offset, tilt), 0.98 * error);
    EXPECT_GT(magnet_angle_error_rad(magnet, gap, offset, tilt + 0.05), 0.98 * error);
    const DiscMagnet larger{3 * magnet.diameter_m, 3 * magnet.thickness_m, 1};
    EXPECT_NEAR(magnet_angle_error_rad(larger, 3 * gap, 3 * offset, tilt), error, tol(1e-12));
  }
}

}  // namespace
}  // namespace gazewright
