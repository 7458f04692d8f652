#include "core/loads/arm.h"

#include <Eigen/Eigenvalues>
#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "core/bodies/bodies.h"
#include "core/loads/beam.h"

namespace gazewright {
namespace {

using Matrix6 = Eigen::Matrix<double, 6, 6>;
using Vector6 = Eigen::Matrix<double, 6, 1>;
constexpr double kShaken = 0.05;  // of the inertia, for a mode to count: common practice, no source
enum { kX, kY, kZ, kRx, kRy, kRz };

struct Pair {
  Matrix6 stiffness = Matrix6::Zero(), mass = Matrix6::Zero();
};

/// Bending with the slope of the end: EI/L³·[12 −6L; −6L 4L²] and m/420·[156 −22L; −22L 4L²];
/// `turn` is the sign of the slope in the rotation.
void add_clamped(Pair& pair, int along, int about, double turn, double EI, double L, double m) {
  const double k = EI / (L * L * L), c = m / 420;
  pair.stiffness(along, along) += 12 * k;
  pair.stiffness(about, about) += 4 * L * L * k;
  pair.stiffness(along, about) += -6 * L * k * turn;
  pair.stiffness(about, along) += -6 * L * k * turn;
  pair.mass(along, along) += 156 * c;
  pair.mass(about, about) += 4 * L * L * c;
  pair.mass(along, about) += -22 * L * c * turn;
  pair.mass(about, along) += -22 * L * c * turn;
}

/// Bending with an end that turns freely.
void add_hinged(Pair& pair, int along, double EI, double L, double m) {
  pair.stiffness(along, along) += 3 * EI / (L * L * L);
  pair.mass(along, along) += kSwingingShare * m;
}

/// One arm at its own end. `clamps` says which turns of the end it takes part in.
struct Clamps {
  bool roll, pitch, yaw;
};
Pair arm_pair(const ArmBeam& arm, const Clamps& clamps) {
  Pair pair;
  const double E = arm.modulus_Pa, L = arm.length_m, m = arm.arm_kg();
  const SectionValues& s = arm.values;
  if (clamps.pitch)
    add_clamped(pair, kX, kRy, 1, E * s.width_m4, L, m);
  else
    add_hinged(pair, kX, E * s.width_m4, L, m);
  if (clamps.roll)
    add_clamped(pair, kY, kRx, -1, E * s.height_m4, L, m);
  else
    add_hinged(pair, kY, E * s.height_m4, L, m);
  pair.stiffness(kZ, kZ) += E * s.area_m2 / L;
  pair.mass(kZ, kZ) += m / 3;
  if (clamps.yaw) {
    const double w = arm.section.width_m, h = arm.section.height_m;
    pair.stiffness(kRz, kRz) += arm.shear_modulus_Pa() * s.torsion_m4 / L;
    pair.mass(kRz, kRz) += m * (w * w + h * h) / 12 / 3;
  }
  return pair;
}

/// Adds an arm whose end lies `y_m` along y from E.
void add_at(Pair& sum, const Pair& arm, double y_m) {
  Matrix6 to_end = Matrix6::Identity();
  to_end(kX, kRz) = -y_m;
  to_end(kZ, kRx) = y_m;
  sum.stiffness += to_end.transpose() * arm.stiffness * to_end;
  sum.mass += to_end.transpose() * arm.mass * to_end;
}

Matrix6 mass_of(const MassProperties& load) {
  Eigen::Matrix3d cross;
  const Eigen::Vector3d& c = load.p_OC_m;
  cross << 0, -c.z(), c.y(), c.z(), 0, -c.x(), -c.y(), c.x(), 0;
  Matrix6 mass;
  mass.topLeftCorner<3, 3>() = load.mass_kg * Eigen::Matrix3d::Identity();
  mass.topRightCorner<3, 3>() = -load.mass_kg * cross;
  mass.bottomLeftCorner<3, 3>() = load.mass_kg * cross;
  mass.bottomRightCorner<3, 3>() = load.I_O_kgm2;
  return mass;
}

}  // namespace

ArmDroop droop_of(const ArmBeam& arm, const MassProperties& load, double lean_rad) {
  const double EI = arm.modulus_Pa * arm.values.height_m4, L = arm.length_m;
  const double per_N = L / (arm.modulus_Pa * arm.values.area_m2);
  const double g = kStandardGravity_mps2, aside = std::abs(load.p_OC_m.y());
  const double down = load.mass_kg * g * std::cos(lean_rad);
  const double arms = arm.is_fork ? 2 : 1;
  const double across = load.mass_kg * g * std::abs(std::sin(lean_rad)) / arms;
  const Bend load_bend = bend_by_force(EI, L, across, L);
  const Bend own = bend_by_own_weight(EI, L, arm.arm_kg() * g * std::abs(std::sin(lean_rad)));
  if (arm.is_fork) {
    // Off the middle one arm carries more and is pressed shorter.
    const double angle = down * aside * per_N / (2 * arm.aside_m * arm.aside_m);
    return {angle, down * per_N / 2 + angle * aside, load_bend.deflection_m + own.deflection_m};
  }
  const Bend turned = bend_by_moment(EI, L, down * aside);
  const double angle = turned.slope_rad + load_bend.slope_rad + own.slope_rad;
  return {angle, angle * aside + down * per_N,
          turned.deflection_m + load_bend.deflection_m + own.deflection_m};
}

ArmModes modes_of(const ArmBeam& arm, const MassProperties& load, const Eigen::Vector3d& end_m) {
  Pair sum;
  if (arm.is_fork) {
    add_at(sum, arm_pair(arm, {.roll = false, .pitch = true, .yaw = false}), arm.aside_m);
    add_at(sum, arm_pair(arm, {.roll = false, .pitch = false, .yaw = false}), -arm.aside_m);
  } else {
    sum = arm_pair(arm, {.roll = true, .pitch = true, .yaw = true});
  }
  // Mass against stiffness: eigenvalues are 1/ω², rising.
  const Matrix6 mass = sum.mass + mass_of(load);
  const Eigen::GeneralizedSelfAdjointEigenSolver<Matrix6> solver(mass, sum.stiffness);
  const auto mode_Hz = [&](int i) {
    return 1 / (2 * std::numbers::pi * std::sqrt(solver.eigenvalues()(i)));
  };
  const auto lowest_Hz = [&](const Vector6& turn) {
    const Vector6 momentum = mass * turn;
    const double all_kgm2 = turn.dot(momentum);
    for (int i = 5; i > 0; --i) {
      const double part = solver.eigenvectors().col(i).dot(momentum);
      if (part * part >= kShaken * all_kgm2 * solver.eigenvalues()(i)) return mode_Hz(i);
    }
    return mode_Hz(0);
  };
  Vector6 pan, tilt;
  pan << -end_m.y(), end_m.x(), 0, 0, 0, 1;
  tilt << 0, 0, 0, 0, 1, 0;
  return {mode_Hz(5), lowest_Hz(pan), lowest_Hz(tilt)};
}

double arm_inertia_kgm2(const ArmBeam& arm, double axis_x_m, double axis_y_m) {
  const double w = arm.section.width_m, h = arm.section.height_m;
  const auto at = [&](double y_m) {
    return arm.arm_kg() * (axis_x_m * axis_x_m + y_m * y_m + (w * w + h * h) / 12);
  };
  return at(axis_y_m + arm.aside_m) + (arm.is_fork ? at(axis_y_m - arm.aside_m) : 0);
}

EndForces inertia_forces(const MassProperties& load, const Eigen::Vector3d& about_m,
                         const Eigen::Vector3d& acceleration_radps2) {
  // Of the end's own acceleration, and of the turning about it.
  const Eigen::Vector3d& turn = acceleration_radps2;
  const Eigen::Vector3d end_mps2 = turn.cross(-about_m);
  const Eigen::Vector3d centre_mps2 = end_mps2 + turn.cross(load.p_OC_m);
  return {(load.mass_kg * centre_mps2).cwiseAbs(),
          (load.I_O_kgm2 * turn + load.mass_kg * load.p_OC_m.cross(end_mps2)).cwiseAbs()};
}

EndForces weight_forces(const MassProperties& load, double lean_rad) {
  const double weight_N = load.mass_kg * kStandardGravity_mps2;
  const double down_N = weight_N * std::cos(lean_rad);
  const double across_N = weight_N * std::abs(std::sin(lean_rad));
  const Eigen::Vector3d c = load.p_OC_m.cwiseAbs();
  return {{across_N, across_N, down_N},
          {down_N * c.y() + across_N * c.z(), down_N * c.x() + across_N * c.z(),
           across_N * std::hypot(c.x(), c.y())}};
}

double root_stress_Pa(const ArmBeam& arm, const EndForces& forces) {
  const Eigen::Vector3d &f = forces.force_N, &n = forces.moment_Nm;
  const SectionValues& s = arm.values;
  const double w = arm.section.width_m, h = arm.section.height_m, L = arm.length_m;
  double wide_Nm = f.x() * L + n.y(), high_Nm = f.y() * L + n.x(), pull_N = f.z(),
         torque_Nm = n.z();
  if (arm.is_fork) {
    // Yaw and roll go into the two arms as a couple; pitch into the one that holds the drive.
    const double apart_m = 2 * arm.aside_m;
    wide_Nm = L * (f.x() / 2 + n.z() / apart_m) + n.y();
    high_Nm = L * f.y() / 2;
    pull_N = f.z() / 2 + n.x() / apart_m;
    torque_Nm = 0;
  }
  const double along_Pa =
      wide_Nm * (w / 2) / s.width_m4 + high_Nm * (h / 2) / s.height_m4 + pull_N / s.area_m2;
  return std::hypot(along_Pa, std::sqrt(3.0) * torsion_stress_Pa(arm.section, torque_Nm));
}

}  // namespace gazewright
