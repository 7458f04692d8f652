#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>

#include "core/motion/coupled.h"
#include "core/motion/drive_train.h"
#include "core/supply/bus.h"
#include "tests/core/motion/coupled_rigs.h"
#include "tests/support/tol.h"

/// What both axes take from the bus is what they do: electrical in = work on the load + losses +
/// what is stored in motion, springs, height and cables.
namespace gazewright {
namespace {

using tests::tied_axes;

/// A row of one axis.
struct Row {
  double motor_rad, motor_radps, load_rad, load_radps, current_A;
};
Row row_of(const Trace& trace, std::size_t i) {
  return {trace.motor_angle_rad[i], trace.motor_speed_radps[i], trace.angle_rad[i],
          trace.speed_radps[i], trace.current_A[i]};
}

double tooth_Nm(const AxisModel& axis, const Row& r) {
  return DriveTrain<double>({&axis}).tooth_torque_Nm({r.motor_rad, r.load_rad},
                                                     {r.motor_radps, r.load_radps});
}

/// Copper, gearbox and friction. [W]
double lost_W(const AxisModel& axis, const Row& r) {
  const GearTrain& gear = axis.gear;
  const double tooth = tooth_Nm(axis, r), at_input = std::abs(tooth) / gear.ratio;
  const double loss =
      at_input * (tooth * r.motor_radps >= 0 ? 1 / gear.efficiency - 1 : 1 - gear.back_efficiency);
  const double copper_W = 1.5 * axis.drive.phase_resistance_ohm * r.current_A * r.current_A;
  const double motor_W = (gear.drag_Nm + loss) *
                             std::clamp(r.motor_radps / kMotorSlope_radps, -1.0, 1.0) *
                             r.motor_radps +
                         gear.viscous_Nmsprad * r.motor_radps * r.motor_radps;
  const double load_W =
      axis.load.coulomb_Nm * std::clamp(r.load_radps / kLoadSlope_radps, -1.0, 1.0) * r.load_radps +
      axis.load.viscous_Nmsprad * r.load_radps * r.load_radps;
  return copper_W + motor_W + load_W;
}

/// What goes into the teeth and does not come out: the spring's energy and the damper's heat. [W]
double teeth_W(const AxisModel& axis, const Row& r) {
  return tooth_Nm(axis, r) * (r.motor_radps / axis.gear.ratio - r.load_radps);
}

double height_J(const RigBodies& bodies, double pan_rad, double tilt_rad) {
  const Eigen::Vector3d up(-std::sin(bodies.lean_rad), 0, std::cos(bodies.lean_rad));
  const Eigen::Matrix3d pan(Eigen::AngleAxisd(pan_rad, Eigen::Vector3d::UnitZ()));
  const Eigen::Matrix3d tilt(Eigen::AngleAxisd(-tilt_rad, Eigen::Vector3d::UnitY()));
  const Eigen::Vector3d moment_kgm =
      bodies.on_pan.mass_kg * bodies.on_pan.p_OC_m +
      bodies.on_tilt.mass_kg * (bodies.p_PT_m + tilt * bodies.on_tilt.p_OC_m);
  return kStandardGravity_mps2 * up.dot(pan * moment_kgm);
}

/// Motion, height and cables at a row. [J]
double stored_J(const CoupledModel& model, const BothMoves& moves, const CoupledTrace& trace,
                std::size_t i) {
  const Row pan = row_of(trace.axis[0], i), tilt = row_of(trace.axis[1], i);
  const double pan_rad = moves.from_rad.pan + pan.load_rad;
  const double tilt_rad = moves.from_rad.tilt + tilt.load_rad;
  const Eigen::Vector2d rate(pan.load_radps, tilt.load_radps);
  double energy_J = 0.5 * rate.dot(mass_matrix_kgm2(model.bodies, tilt_rad) * rate) +
                    height_J(model.bodies, pan_rad, tilt_rad);
  const double angles[]{pan_rad, tilt_rad}, motors[]{pan.motor_radps, tilt.motor_radps};
  for (std::size_t k = 0; k < 2; ++k) {
    const AxisModel& axis = model.axis[k];
    energy_J += 0.5 * axis.gear.rotor_inertia_kgm2 * motors[k] * motors[k];
    const double twist_rad = angles[k] - axis.load.cable_centre_rad;
    energy_J += 0.5 * axis.load.cable_stiffness_Nmprad * twist_rad * twist_rad;
  }
  return energy_J;
}

void expect_balance(const CoupledModel& model, const BothMoves& moves, double duration_s,
                    const char* what) {
  const CoupledTrace trace = simulate_moves(model, moves, duration_s);
  ASSERT_FALSE(trace.ran_away);
  const double row_s = trace.axis[0].sample_time_s;
  std::vector<double> in_W, out_W;
  for (std::size_t i = 0; i < trace.bus_A.size(); ++i) {
    in_W.push_back(trace.bus_A[i] * model.axis[0].drive.bus_voltage_V);
    out_W.push_back(0);
    for (std::size_t k = 0; k < 2; ++k) {
      const Row row = row_of(trace.axis[k], i);
      out_W.back() += lost_W(model.axis[k], row) + teeth_W(model.axis[k], row);
    }
  }
  const double size_J = power_sums(in_W, row_s).drawn_J;
  // Halfway, both at full speed, and at the end.
  for (const double part : {0.15, 0.3, 1.0}) {
    const auto last = static_cast<std::size_t>(part * static_cast<double>(trace.bus_A.size() - 1));
    const double until_s = static_cast<double>(last) * row_s;
    const double stored = stored_J(model, moves, trace, last) - stored_J(model, moves, trace, 0);
    const double off_J = integral(in_W, row_s, until_s) - integral(out_W, row_s, until_s) - stored;
    // Rows of 31 µs; the teeth of some 100 Hz ring between them, each blow is cut by a row.
    EXPECT_NEAR(off_J / size_J, 0, tol(1e-3)) << what << " until " << until_s << " s";
  }
  EXPECT_GT(size_J, 0.1) << what;
}

CoupledModel finely_sampled() {
  CoupledModel model = tied_axes();
  for (AxisModel& axis : model.axis) axis.control.control_rate_Hz = 32000;
  return model;
}

TEST(EnergyBalance, OfBothAxesMovingAtOnceCloses) {
  expect_balance(finely_sampled(), centred({0.7, 0.5}), 0.4, "task");
}

TEST(EnergyBalance, ClosesUnderWeightCableAndAWeakSupply) {
  CoupledModel model = finely_sampled();
  model.bodies.lean_rad = 0.4;
  for (AxisModel& axis : model.axis) {
    axis.drive.supply_current_limit_A = 2;
    axis.load.cable_stiffness_Nmprad = 0.3;
    axis.load.cable_centre_rad = 0.2;
  }
  expect_balance(model, centred({0.7, -0.5}), 0.4, "leaning");
}

TEST(EnergyBalance, ClosesFarOffTheRestPoseAndOneAfterTheOther) {
  const BothMoves moves{.from_rad = {-1.2, 0.6}, .move_rad = {1.5, -0.9}, .begin_s = {0, 0.06}};
  expect_balance(finely_sampled(), moves, 0.5, "shifted");
}

TEST(BothMoves, BeginWhereTheyAreToldAndWhenTheyAreTold) {
  CoupledModel model = tied_axes();
  model.bodies.lean_rad = 0.3;
  const CoupledTrace trace = simulate_moves(
      model, {.from_rad = {0.4, -0.3}, .move_rad = {0.5, 0.4}, .begin_s = {0.1, 0}}, 0.6);
  const Trace& pan = trace.of(Axis::pan);
  std::size_t first = 0;
  while (std::abs(pan.current_A[first] - pan.current_A[0]) < 3) ++first;
  EXPECT_NEAR(pan.time_s[first], 0.1, 1e-3);
  EXPECT_NEAR(pan.angle_rad.back(), 0.5, 0.01);
  EXPECT_NEAR(trace.of(Axis::tilt).angle_rad.back(), 0.4, 0.01);
  // The same moves without a delay are the centred ones where the rest pose lies in their middle.
  const CoupledTrace told = simulate_moves(model, {{-0.25, -0.2}, {0.5, 0.4}, {}}, 0.1);
  EXPECT_EQ(told.bus_A, simulate_both(model, {0.5, 0.4}, 0.1).bus_A);
}

}  // namespace
}  // namespace gazewright
