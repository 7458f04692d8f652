#include "core/loads/carried.h"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <vector>

#include "core/units/angle.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

/// What bearings carry, against the same from turned point masses and differences of their places.
namespace gazewright {
namespace {

using Eigen::AngleAxisd;
using Eigen::Vector3d;

struct Mass {
  double kg;
  Vector3d at_m;
};
struct PointRig {
  std::vector<Mass> on_pan, on_tilt;
  Vector3d axis_at_m;
  double lean_rad;
};

PointRig random_points(tests::Random& random) {
  PointRig rig;
  const auto place = [&] {
    return Vector3d(random.uniform(-0.1, 0.1), random.uniform(-0.1, 0.1),
                    random.uniform(-0.1, 0.1));
  };
  for (int i = 0; i < 3; ++i) {
    rig.on_pan.push_back({random.log_uniform(0.05, 2), place()});
    rig.on_tilt.push_back({random.log_uniform(0.05, 2), place()});
  }
  rig.axis_at_m = place();
  rig.lean_rad = random.chance(0.3) ? 0 : random.uniform(-1, 1);
  return rig;
}

RigBodies bodies_of(const PointRig& points) {
  Rig rig;
  const auto add = [](std::vector<Body>& bodies, const std::vector<Mass>& masses) {
    for (const Mass& m : masses)
      bodies.push_back({.name = {},
                        .mass_kg = si_quantity(m.kg),
                        .centre_m = {si_quantity(m.at_m.x()), si_quantity(m.at_m.y()),
                                     si_quantity(m.at_m.z())}});
  };
  add(rig.on_pan, points.on_pan);
  add(rig.on_tilt, points.on_tilt);
  for (int i = 0; i < 3; ++i) rig.tilt_axis_at_m[std::size_t(i)] = si_quantity(points.axis_at_m[i]);
  rig.stand.lean_rad = si_quantity(points.lean_rad);
  return rig_bodies(rig);
}

struct Moves {
  double pan_rad, tilt_rad, pan_radps, tilt_radps, pan_radps2, tilt_radps2;
};

/// Radial, axial and moment load on the bearings of `axis` at one moment of one motion.
Vector3d load_at(const PointRig& rig, Axis axis, const Moves& moves) {
  constexpr double h = 1e-4;  // s
  const auto pan = [&](double t) {
    return AngleAxisd(moves.pan_rad + moves.pan_radps * t + moves.pan_radps2 * t * t / 2,
                      Vector3d::UnitZ());
  };
  const auto tilt = [&](double t) {
    return AngleAxisd(-(moves.tilt_rad + moves.tilt_radps * t + moves.tilt_radps2 * t * t / 2),
                      Vector3d::UnitY());
  };
  const auto place = [&](const Mass& m, bool tilts, double t) -> Vector3d {
    return pan(t) * (tilts ? Vector3d(rig.axis_at_m + tilt(t) * m.at_m) : m.at_m);
  };
  const Vector3d g(kStandardGravity_mps2 * std::sin(rig.lean_rad), 0,
                   -kStandardGravity_mps2 * std::cos(rig.lean_rad));
  std::vector<std::pair<Vector3d, Vector3d>> forces;  // place and force in P
  double mass = 0;
  Vector3d centre = Vector3d::Zero();
  const auto add = [&](const std::vector<Mass>& masses, bool tilts) {
    for (const Mass& m : masses) {
      const Vector3d now = place(m, tilts, 0);
      const Vector3d a = (place(m, tilts, h) - 2 * now + place(m, tilts, -h)) / (h * h);
      const auto to_P = pan(0).inverse();
      forces.emplace_back(to_P * now, to_P * Vector3d(m.kg * (g - a)));
      mass += m.kg;
      centre += m.kg * forces.back().first;
    }
  };
  if (axis == Axis::pan) add(rig.on_pan, false);
  add(rig.on_tilt, true);
  centre /= mass;
  const Vector3d along = axis == Axis::pan ? Vector3d::UnitZ() : Vector3d::UnitY();
  const Vector3d on_axis = axis == Axis::pan ? Vector3d::Zero() : rig.axis_at_m;
  const Vector3d beside = on_axis + along * along.dot(centre - on_axis);
  Vector3d force = Vector3d::Zero(), moment = Vector3d::Zero();
  for (const auto& [at, f] : forces) {
    force += f;
    moment += (at - beside).cross(f);
  }
  const auto across = [&](const Vector3d& v) { return (v - along * along.dot(v)).norm(); };
  return {across(force), std::abs(along.dot(force)), across(moment)};
}

/// Largest of each over poses and signs; the poses are those of the program's scan.
Vector3d largest_load(const PointRig& rig, Axis axis, const BothMotions& m, double least,
                      double most) {
  Vector3d largest = Vector3d::Zero();
  for (int i = 0; i <= 8; ++i) {
    for (int k = 0; k < 12; ++k) {
      for (int signs = 0; signs < 16; ++signs) {
        const auto sign = [&](int bit) { return (signs >> bit) & 1 ? -1.0 : 1.0; };
        const Moves moves{k * kPi / 6,
                          least + i * (most - least) / 8,
                          sign(0) * m.pan.speed_radps,
                          sign(1) * m.tilt.speed_radps,
                          sign(2) * m.pan.acceleration_radps2,
                          sign(3) * m.tilt.acceleration_radps2};
        largest = largest.cwiseMax(load_at(rig, axis, moves));
      }
    }
  }
  return largest;
}

MotionAt always(const BothMotions& motion) {
  return [motion](double) { return motion; };
}

TEST(CarriedLoad, IsNeverLessThanThatOfThePointsAndNotMuchMore) {
  for (std::uint64_t seed = 0; seed < 12; ++seed) {
    tests::Random random(seed);
    const PointRig rig = random_points(random);
    const BothMotions motion{{random.uniform(0, 15), random.uniform(0, 200)},
                             {random.uniform(0, 15), random.uniform(0, 200)}};
    const double least = random.uniform(-2, 0), most = random.uniform(0, 2);
    for (const Axis axis : kAxes) {
      const CarriedLoad load = carried_load(bodies_of(rig), axis, always(motion), least, most);
      const Vector3d seen = largest_load(rig, axis, motion, least, most);
      // Differences over 1e-4 s: h²/12·r·(ω⁴ + ...) is below 1e-4 of these accelerations.
      const double off = tol(2e-4);
      EXPECT_GE(load.radial_N, seen[0] * (1 - off)) << seed << name_of(axis);
      EXPECT_GE(load.axial_N, seen[1] * (1 - off)) << seed << name_of(axis);
      EXPECT_GE(load.moment_Nm, seen[2] * (1 - off)) << seed << name_of(axis);
      // Three magnitudes are added, of weight, own turning and the other axis; none of them is more
      // than the whole at its own worst moment.
      EXPECT_LE(load.radial_N, 3 * seen[0]) << seed << name_of(axis);
      EXPECT_LE(load.axial_N, 3 * seen[1]) << seed << name_of(axis);
      EXPECT_LE(load.moment_Nm, 3 * seen[2]) << seed << name_of(axis);
    }
  }
}

TEST(CarriedLoad, OfOneAxisTurningIsExact) {
  for (std::uint64_t seed = 100; seed < 108; ++seed) {
    tests::Random random(seed);
    PointRig rig = random_points(random);
    rig.lean_rad = 0;
    const BothMotions pan_only{{random.uniform(1, 15), random.uniform(10, 200)}, {}};
    const double tilt = random.uniform(-1, 1);
    const CarriedLoad load = carried_load(bodies_of(rig), Axis::pan, always(pan_only), tilt, tilt);
    const Vector3d seen = largest_load(rig, Axis::pan, pan_only, tilt, tilt);
    EXPECT_NEAR(load.radial_N, seen[0], tol(2e-4) * seen[0]) << seed;
    EXPECT_NEAR(load.axial_N, seen[1], tol(1e-7) * seen[1]) << seed;
  }
}

TEST(CarriedLoad, AtRestIsTheWeight) {
  tests::Random random(7);
  PointRig rig = random_points(random);
  rig.lean_rad = 0.3;
  double mass = 0, tilting = 0;
  for (const Mass& m : rig.on_tilt) tilting += m.kg;
  for (const Mass& m : rig.on_pan) mass += m.kg;
  mass += tilting;
  const CarriedLoad pan = carried_load(bodies_of(rig), Axis::pan, always({}), 0, 0);
  EXPECT_NEAR(pan.radial_N, mass * 9.80665 * std::sin(0.3), tol(1e-12) * mass * 10);
  EXPECT_NEAR(pan.axial_N, mass * 9.80665 * std::cos(0.3), tol(1e-12) * mass * 10);
  const CarriedLoad at_tilt = carried_load(bodies_of(rig), Axis::tilt, always({}), -1, 1);
  EXPECT_NEAR(at_tilt.radial_N, tilting * 9.80665, tol(1e-12) * tilting * 10);
  EXPECT_NEAR(at_tilt.axial_N, tilting * 9.80665 * std::sin(0.3), tol(1e-12) * tilting * 10);
  EXPECT_DOUBLE_EQ(at_tilt.moment_Nm, at_tilt.weight_moment_Nm);
}

TEST(CarriedLoad, TakesTheMotionOfEachPose) {
  tests::Random random(9);
  const RigBodies bodies = bodies_of(random_points(random));
  const BothMotions quick{{3, 120}, {2, 40}};
  const auto radial = [&](double from, double to) {  // quick in this part of the travel only
    return carried_load(
               bodies, Axis::pan,
               [&](double tilt) { return tilt >= from && tilt <= to ? quick : BothMotions{}; }, -1,
               1)
        .radial_N;
  };
  const double everywhere = radial(-1, 1);
  EXPECT_DOUBLE_EQ(everywhere, std::max(radial(-1, 0), radial(0, 1)));
  const double at_rest = radial(2, 3), low = radial(-1, -0.9), high = radial(0.9, 1);
  EXPECT_GT(low, at_rest);
  EXPECT_GT(high, at_rest);
  EXPECT_NE(low, high);
}

TEST(CarriedLoad, GrowsWithTheSquareOfTheSpeed) {
  tests::Random random(8);
  const RigBodies bodies = bodies_of(random_points(random));
  for (const Axis axis : kAxes) {
    const auto moving = [&](double factor) {
      const CarriedLoad load = carried_load(
          bodies, axis,
          always({{4 * factor, 50 * factor * factor}, {6 * factor, 30 * factor * factor}}), -1, 1);
      return load.axial_N - load.weight_axial_N;  // no pose changes the axial weight
    };
    EXPECT_NEAR(moving(3) / moving(1), 9, tol(1e-9));
  }
}

}  // namespace
}  // namespace gazewright
