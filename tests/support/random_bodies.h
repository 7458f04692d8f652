#pragma once

#include <Eigen/Geometry>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <random>

#include "core/rig/rig.h"

/// Seeded random numbers and rigs for tests: the same on every machine.
namespace gazewright::tests {

class Random {
 public:
  explicit Random(std::uint64_t seed) : engine_(seed) {}

  double uniform(double least, double most) {
    return least + (most - least) * static_cast<double>(engine_() >> 11) * 0x1p-53;
  }
  /// Every decade as likely as the next.
  double log_uniform(double least, double most) {
    return least * std::pow(most / least, uniform(0, 1));
  }
  bool chance(double probability) { return uniform(0, 1) < probability; }
  int below(int count) { return static_cast<int>(uniform(0, count)); }

 private:
  std::mt19937_64 engine_;
};

/// A tensor that a body of this mass and size can have, its principal axes turned anyhow.
inline Tensor random_tensor(Random& random, double mass_kg, double size_m) {
  const auto squared = [&] { return std::pow(random.uniform(0.05, 1) * size_m, 2); };
  const double a = squared(), b = squared(), c = squared();
  const Eigen::Vector3d moments = mass_kg / 5 * Eigen::Vector3d(b + c, a + c, a + b);
  const auto part = [&] { return random.uniform(-1, 1); };
  const Eigen::Matrix3d R =
      Eigen::Quaterniond(part(), part(), part(), part()).normalized().toRotationMatrix();
  const Eigen::Matrix3d I = R * moments.asDiagonal() * R.transpose();
  return {{si_quantity(I(0, 0)), si_quantity(I(1, 1)), si_quantity(I(2, 2)), si_quantity(I(0, 1)),
           si_quantity(I(0, 2)), si_quantity(I(1, 2))}};
}

inline Shape random_shape(Random& random, double mass_kg, double size_m) {
  const auto length = [&] { return si_quantity(random.uniform(0.1, 1) * size_m); };
  switch (random.below(4)) {
    case 0:
      return Ball{length()};
    case 1:
      return Box{{length(), length(), length()}};
    case 2: {
      static constexpr const char* kAxes[] = {"x", "y", "z"};
      return Tube{{kAxes[random.below(3)]}, length(), si_quantity(0), length()};
    }
    default:
      return random_tensor(random, mass_kg, size_m);
  }
}

inline Body random_body(Random& random, double mass_scale_kg, double size_m) {
  Body body;
  const double mass_kg = mass_scale_kg * random.log_uniform(0.1, 1);
  body.mass_kg = si_quantity(mass_kg);
  for (Quantity& coordinate : body.centre_m)
    coordinate = si_quantity(random.uniform(-1, 1) * size_m);
  body.shape = random_shape(random, mass_kg, size_m);
  return body;
}

/// A rig with bodies, tilt axis and lean only: from a coin on a stick to a searchlight; one in five
/// without offset, one in five without lean.
inline Rig random_bodies_rig(Random& random) {
  Rig rig;
  const double size_m = random.log_uniform(0.005, 2), mass_kg = random.log_uniform(0.001, 100);
  for (int left = 1 + random.below(3); left > 0; --left)
    rig.on_pan.push_back(random_body(random, mass_kg, size_m));
  for (int left = 1 + random.below(4); left > 0; --left)
    rig.on_tilt.push_back(random_body(random, mass_kg, size_m));
  const bool meets = random.chance(0.2), upright = random.chance(0.2);
  for (Quantity& coordinate : rig.tilt_axis_at_m)
    coordinate = si_quantity(meets ? 0 : random.uniform(-1, 1) * size_m);
  rig.stand.lean_rad = si_quantity(upright ? 0 : random.uniform(-1, 1));
  return rig;
}

inline double random_angle_rad(Random& random) {
  return random.uniform(-std::numbers::pi, std::numbers::pi);
}

}  // namespace gazewright::tests
