#include "core/heat/move_energy.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "core/bodies/bodies.h"
#include "core/rig/fields.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

AxisModel model_of(const Rig& rig, Axis axis) {
  const Rig full = with_defaults(rig);
  return axis_model(full, rig_bodies(full), axis);
}

double move_of(const Rig& rig, Axis axis) {
  return (axis == Axis::pan ? rig.task.pan_move_rad : rig.task.tilt_move_rad).value();
}

void expect_balance(const Rig& rig, const std::string& name) {
  for (const Axis axis : kAxes) {
    const AxisModel model = model_of(rig, axis);
    for (const double move : {move_of(rig, axis), -0.4 * move_of(rig, axis)}) {
      const Trace trace = simulate_step(model, move, 0.6);
      double largest_J = 0;
      for (const double until_s : {0.02, 0.05, 0.1, 0.2, 0.6}) {
        const MoveEnergy energy = energy_of(model, trace, move, until_s);
        largest_J = std::max(largest_J, energy.electrical_J);
        // 1e-3 of what the bus has given so far.
        EXPECT_NEAR(energy.balance_J() / largest_J, 0, tol(1e-3))
            << name << ' ' << name_of(axis) << ' ' << move << " until " << until_s;
        EXPECT_GE(energy.gear_J, 0);
        EXPECT_GE(energy.friction_J, 0);
      }
    }
  }
}

TEST(MoveEnergy, WhatTheBusGivesIsLostOrStoredOnTheOwl) { expect_balance(tests::owl(), "owl"); }

TEST(MoveEnergy, WhatTheBusGivesIsLostOrStoredOnEverySample) {
  int files = 0;
  const std::filesystem::path folder = std::filesystem::path(GAZEWRIGHT_SOURCE_DIR) / "sample-rigs";
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    const LoadedRig loaded = load_rig(entry.path());
    if (!loaded.rig) continue;
    ++files;
    expect_balance(*loaded.rig, entry.path().filename().string());
  }
  EXPECT_GE(files, 3);
}

TEST(MoveEnergy, TheBusCurrentOfTheTraceIsTheElectricalEnergy) {
  const Rig rig = tests::owl();
  const AxisModel model = model_of(rig, Axis::pan);
  const Trace trace = simulate_step(model, 0.7, 0.3);
  double bus_J = 0;
  for (std::size_t k = 1; k < trace.time_s.size(); ++k)
    bus_J +=
        24 * (trace.bus_A[k] + trace.bus_A[k - 1]) / 2 * (trace.time_s[k] - trace.time_s[k - 1]);
  // The trapezoid rule misses how the current bends within a sample.
  EXPECT_NEAR(energy_of(model, trace, 0.7, 0.3).electrical_J / bus_J, 1, tol(5e-3));
}

TEST(MoveEnergy, ATraceOfNoTimeHasNone) {
  const AxisModel model = model_of(tests::owl(), Axis::pan);
  EXPECT_EQ(energy_of(model, {}, 0.7, 1).electrical_J, 0);
  EXPECT_EQ(energy_of(model, simulate_step(model, 0.7, 0.1), 0.7, 0).electrical_J, 0);
}

}  // namespace
}  // namespace gazewright
