#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <array>
#include <cmath>

#include "core/bodies/bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;

Matrix3d unit_mass(const Shape& shape) { return inertia_about_centre_kgm2(shape, 1); }

/// A solid tetrahedron as four point masses that have its mass, centre and second moments exactly:
/// the four-point rule of degree 2 (A.H. Stroud, Approximate Calculation of Multiple Integrals,
/// 1971, from memory).
std::vector<Body> tetrahedron(const std::array<Vector3d, 4>& corner_m, const Vector3d& about_m) {
  const double near = (5 + 3 * std::sqrt(5)) / 20, far = (5 - std::sqrt(5)) / 20;
  const double volume_m3 = std::abs((corner_m[1] - corner_m[0])
                                        .cross(corner_m[2] - corner_m[0])
                                        .dot(corner_m[3] - corner_m[0])) /
                           6;
  const Vector3d sum_m = corner_m[0] + corner_m[1] + corner_m[2] + corner_m[3];
  std::vector<Body> points;
  for (const Vector3d& corner : corner_m) {
    const Vector3d p_m = far * sum_m + (near - far) * corner - about_m;
    points.push_back({"",
                      si_quantity(volume_m3 / 4),
                      {si_quantity(p_m.x()), si_quantity(p_m.y()), si_quantity(p_m.z())},
                      Point{}});
  }
  return points;
}

TEST(MassProperties, OfAPublishedTetrahedron) {
  // Source: F. Tonon, Explicit exact formulas for the 3-D tetrahedron inertia tensor in terms of
  // its vertex coordinates, J. Math. Stat. 1(1) 2005, 8-11; density 1. The paper swaps two of its
  // products and its centre's x is off in the last digit (15.924948).
  const std::array<Vector3d, 4> corners{Vector3d{8.3322, -11.86875, 0.93355},
                                        {0.75523, 5, 16.37072},
                                        {52.61236, 5, -5.3858},
                                        {2, 5, 3}};
  const Vector3d centre_m = combined(tetrahedron(corners, Vector3d::Zero())).p_OC_m;
  EXPECT_NEAR(centre_m.x(), 15.92492, tol(3e-5));
  EXPECT_NEAR(centre_m.y(), 0.78281, tol(1e-5));
  EXPECT_NEAR(centre_m.z(), 3.72962, tol(1e-5));
  const Matrix3d I = combined(tetrahedron(corners, centre_m)).I_O_kgm2;
  const double part = 1e-5;  // the tolerance that the printed digits allow
  EXPECT_NEAR(I(0, 0), 43520.33257, tol(part * 43520));
  EXPECT_NEAR(I(1, 1), 194711.28938, tol(part * 194711));
  EXPECT_NEAR(I(2, 2), 191168.76173, tol(part * 191168));
  EXPECT_NEAR(I(0, 1), -11996.20119, tol(part * 11996));
  EXPECT_NEAR(I(0, 2), 46343.16662, tol(part * 46343));
  EXPECT_NEAR(I(1, 2), -4417.6615, tol(part * 4417));
}

TEST(MassProperties, OfTheUnitRightTetrahedron) {
  // Analytic: V = 1/6, centre at a quarter, Ixx = ∫(y² + z²) = 1/30 about the corner, Ixy = −∫xy =
  // −1/120. About the centre 1/80 and +1/480 (B. Mirtich, Fast and accurate computation of
  // polyhedral mass properties, 1996, gives the method).
  const std::array<Vector3d, 4> corners{Vector3d::Zero(), Vector3d::UnitX(), Vector3d::UnitY(),
                                        Vector3d::UnitZ()};
  const MassProperties at_corner = combined(tetrahedron(corners, Vector3d::Zero()));
  EXPECT_NEAR(at_corner.mass_kg, 1.0 / 6, tol(1e-16));
  EXPECT_NEAR((at_corner.p_OC_m - Vector3d::Constant(0.25)).norm(), 0, tol(1e-15));
  EXPECT_NEAR(at_corner.I_O_kgm2(0, 0), 1.0 / 30, tol(1e-16));
  EXPECT_NEAR(at_corner.I_O_kgm2(0, 1), -1.0 / 120, tol(1e-16));
  const Matrix3d about_centre = combined(tetrahedron(corners, Vector3d::Constant(0.25))).I_O_kgm2;
  EXPECT_NEAR(about_centre(0, 0), 1.0 / 80, tol(1e-16));
  EXPECT_NEAR(about_centre(0, 1), 1.0 / 480, tol(1e-16));
}

TEST(MassProperties, OfTheUnitCubeIsASixth) {
  const Matrix3d cube = unit_mass(Box{{si_quantity(1), si_quantity(1), si_quantity(1)}});
  EXPECT_NEAR((cube - Matrix3d::Identity() / 6).norm(), 0, tol(1e-16));
}

TEST(MassProperties, OfTheHandbookSolids) {
  // Source: J.L. Meriam, L.G. Kraige, Engineering Mechanics: Dynamics, table D/4 (from memory,
  // checked by numerical integration); m = 1.
  const auto sphere = [](double wall_m) {
    return unit_mass(Shell{si_quantity(2), si_quantity(wall_m)})(0, 0);
  };
  EXPECT_NEAR(unit_mass(Ball{si_quantity(2)})(0, 0), 0.4, tol(1e-16));
  EXPECT_NEAR(sphere(1e-7), 0.66667, tol(5e-6));
  EXPECT_NEAR(sphere(0.5), 0.442857, tol(5e-7));
  EXPECT_NEAR(sphere(0.001), 0.66600, tol(5e-6));
  const Matrix3d rod = unit_mass(Tube{{"x"}, si_quantity(2), si_quantity(0), si_quantity(10)});
  EXPECT_NEAR(rod(0, 0), 0.5, tol(1e-16));
  EXPECT_NEAR(rod(1, 1), 8.58333, tol(5e-6));
  EXPECT_NEAR(rod(2, 2), 8.58333, tol(5e-6));
  const Matrix3d tube = unit_mass(Tube{{"x"}, si_quantity(2), si_quantity(1), si_quantity(10)});
  EXPECT_NEAR(tube(0, 0), 0.625, tol(1e-16));
}

}  // namespace
}  // namespace gazewright
