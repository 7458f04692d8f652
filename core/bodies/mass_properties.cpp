#include <Eigen/Eigenvalues>
#include <algorithm>

#include "core/bodies/bodies.h"

namespace gazewright {
namespace {

Eigen::Matrix3d diagonal(double xx, double yy, double zz) {
  return Eigen::Vector3d(xx, yy, zz).asDiagonal();
}

/// Hollow sphere between radii r and R: (2/5)m(R⁵ − r⁵)/(R³ − r³), with R − r divided out so that a
/// thin wall loses no digits.
double hollow_sphere_kgm2(double mass_kg, double outer_m, double inner_m) {
  const double R = outer_m, r = inner_m;
  const double fourth =
      R * R * R * R + R * R * R * r + R * R * r * r + R * r * r * r + r * r * r * r;
  return 0.4 * mass_kg * fourth / (R * R + R * r + r * r);
}

struct InertiaOf {
  double mass_kg;

  Eigen::Matrix3d operator()(const Ball& ball) const {
    const double radius_m = ball.diameter_m.value() / 2;
    return 0.4 * mass_kg * radius_m * radius_m * Eigen::Matrix3d::Identity();
  }
  Eigen::Matrix3d operator()(const Shell& shell) const {
    const double outer_m = shell.diameter_m.value() / 2;
    return hollow_sphere_kgm2(mass_kg, outer_m, outer_m - shell.wall_m.value()) *
           Eigen::Matrix3d::Identity();
  }
  Eigen::Matrix3d operator()(const Tube& tube) const {
    const double R = tube.diameter_m.value() / 2, r = tube.bore_m.value() / 2;
    const double length_m = tube.length_m.value();
    const double along = mass_kg * (R * R + r * r) / 2;
    const double across = mass_kg * (3 * (R * R + r * r) + length_m * length_m) / 12;
    if (tube.along.value == "x") return diagonal(along, across, across);
    if (tube.along.value == "y") return diagonal(across, along, across);
    return diagonal(across, across, along);
  }
  Eigen::Matrix3d operator()(const Box& box) const {
    const double x = box.side_m[0].value(), y = box.side_m[1].value(), z = box.side_m[2].value();
    return mass_kg / 12 * diagonal(y * y + z * z, x * x + z * z, x * x + y * y);
  }
  Eigen::Matrix3d operator()(const Point&) const { return Eigen::Matrix3d::Zero(); }
  Eigen::Matrix3d operator()(const Tensor& tensor) const {
    const auto& e = tensor.element_kgm2;
    const double xy = e[3].value(), xz = e[4].value(), yz = e[5].value();
    Eigen::Matrix3d inertia;
    inertia << e[0].value(), xy, xz, xy, e[1].value(), yz, xz, yz, e[2].value();
    return inertia;
  }
};

Eigen::Vector3d vector_m(const std::array<Quantity, 3>& at) {
  return {at[0].value(), at[1].value(), at[2].value()};
}

}  // namespace

Eigen::Matrix3d inertia_about_centre_kgm2(const Shape& shape, double mass_kg) {
  return std::visit(InertiaOf{mass_kg}, shape);
}

MassProperties combined(const std::vector<Body>& bodies) {
  MassProperties sum;
  Eigen::Vector3d moment_kgm = Eigen::Vector3d::Zero();
  for (const Body& body : bodies) {
    const double mass_kg = body.mass_kg.value();
    const Eigen::Vector3d p_OC_m = vector_m(body.centre_m);
    sum.mass_kg += mass_kg;
    moment_kgm += mass_kg * p_OC_m;
    sum.I_O_kgm2 += inertia_about_centre_kgm2(body.shape, mass_kg) +
                    mass_kg * (p_OC_m.squaredNorm() * Eigen::Matrix3d::Identity() -
                               p_OC_m * p_OC_m.transpose());
  }
  if (sum.mass_kg != 0) sum.p_OC_m = moment_kgm / sum.mass_kg;
  return sum;
}

bool is_possible_inertia(const Eigen::Matrix3d& inertia_kgm2) {
  if (!inertia_kgm2.allFinite()) return false;
  const double scale_kgm2 = inertia_kgm2.cwiseAbs().maxCoeff();
  if (scale_kgm2 == 0) return true;
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> solver(inertia_kgm2 / scale_kgm2,
                                                              Eigen::EigenvaluesOnly);
  const Eigen::Vector3d& moments = solver.eigenvalues();  // rising
  const double rounding = 1e-12;
  const double rounded_entry = 1e-3;  // a flat part written with three or four digits still passes
  return moments(0) >= -rounding && moments(2) <= moments(0) + moments(1) + rounded_entry;
}

RigBodies rig_bodies(const Rig& rig) {
  return {combined(rig.on_pan), combined(rig.on_tilt), vector_m(rig.tilt_axis_at_m),
          rig.stand.lean_rad.value()};
}

}  // namespace gazewright
