#include "core/travel/magnet.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>

#include "core/units/angle.h"

namespace gazewright {
namespace {

using Eigen::Vector3d;

constexpr std::size_t kRimPoints = 32;
const std::array<Eigen::Vector2d, kRimPoints>& rim_directions() {
  static const auto directions = [] {
    std::array<Eigen::Vector2d, kRimPoints> all;
    for (std::size_t i = 0; i < kRimPoints; ++i) {
      const double angle = 2 * kPi * static_cast<double>(i) / kRimPoints;
      all[i] = {std::cos(angle), std::sin(angle)};
    }
    return all;
  }();
  return directions;
}

// Directions in which the magnet stands while it turns before the sensor, and of the tilt's axis
// from across the offset one way to across it the other; the rest is their mirror image.
constexpr std::size_t kTurns = 48;
constexpr int kTilts = 4;

/// Field at the sensor while the magnet turns through angles of 2π/kTurns, in the stand's frame.
std::array<Vector3d, kTurns> fields_of_a_turn(const DiscMagnet& magnet, double gap_m,
                                              double offset_m) {
  std::array<Vector3d, kTurns> fields;
  for (std::size_t i = 0; i < kTurns; ++i) {
    const double angle = 2 * kPi * static_cast<double>(i) / kTurns;
    const Vector3d place(offset_m * std::cos(angle), -offset_m * std::sin(angle), gap_m);
    fields[i] = Eigen::AngleAxisd(angle, Vector3d::UnitZ()) * magnet_field_T(magnet, place);
  }
  return fields;
}

/// Half the range of reading less angle, for a sensor whose plane has the axes u and v.
double half_range_rad(const std::array<Vector3d, kTurns>& fields, const Vector3d& u,
                      const Vector3d& v) {
  double least = kPi, most = -kPi;
  for (std::size_t i = 0; i < kTurns; ++i) {
    const double angle = 2 * kPi * static_cast<double>(i) / kTurns;
    // On the axis the field points against the magnetisation.
    const double reading = std::atan2(-fields[i].dot(v), -fields[i].dot(u));
    const double error = std::remainder(reading - angle, 2 * kPi);
    least = std::min(least, error);
    most = std::max(most, error);
  }
  return (most - least) / 2;
}

}  // namespace

Vector3d magnet_field_T(const DiscMagnet& magnet, const Vector3d& p_FP_m) {
  const double radius = magnet.diameter_m / 2;
  const double near = p_FP_m.z(), far = near + magnet.thickness_m;
  Vector3d sum = Vector3d::Zero();
  for (const Eigen::Vector2d& direction : rim_directions()) {
    const Eigen::Vector2d off = p_FP_m.head<2>() - radius * direction;
    const double square = off.squaredNorm();
    const double to_near = std::sqrt(square + near * near), to_far = std::sqrt(square + far * far);
    const double across = (far / to_far - near / to_near) / square;
    sum += direction.x() * Vector3d(off.x() * across, off.y() * across, 1 / to_near - 1 / to_far);
  }
  return magnet.remanence_T * radius / 2 / kRimPoints * sum;
}

double magnet_axis_field_T(const DiscMagnet& magnet, double gap_m) {
  const double radius = magnet.diameter_m / 2, far = gap_m + magnet.thickness_m;
  return magnet.remanence_T / 4 *
         (far / std::hypot(far, radius) - gap_m / std::hypot(gap_m, radius));
}

double magnet_angle_error_rad(const DiscMagnet& magnet, double gap_m, double offset_m,
                              double tilt_rad) {
  const auto fields = fields_of_a_turn(magnet, gap_m, offset_m);
  double worst = 0;
  for (int i = 0; i <= kTilts; ++i) {
    const double direction = kPi * i / kTilts - kPi / 2;
    const Eigen::AngleAxisd tilted(tilt_rad, Vector3d(std::cos(direction), std::sin(direction), 0));
    worst = std::max(
        worst, half_range_rad(fields, tilted * Vector3d::UnitX(), tilted * Vector3d::UnitY()));
  }
  return worst;
}

double eccentricity_error_rad(double offset_m, double radius_m) { return offset_m / radius_m; }

}  // namespace gazewright
