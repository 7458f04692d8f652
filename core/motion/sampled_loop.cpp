#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <unsupported/Eigen/MatrixFunctions>

#include "core/motion/smoothness.h"

/// Both loops of design section 5 as one matrix from sample to sample, gear wound tight.
namespace gazewright {
namespace {

constexpr double kSlack = 1e-9;  // a pole of the integrator without gain lies on the circle

// States of the train at the output: angle and speed of the rotor, of the load, and torque.
enum Train { kRotor, kRotorSpeed, kLoad, kLoadSpeed, kTorque, kCommand, kTrainStates };
// Behind them the controller's: reading before, estimated speed, integral.
enum Control { kLast = kTrainStates, kSpeed, kIntegral, kAllStates };

using TrainMatrix = Eigen::Matrix<double, kTrainStates, kTrainStates>;
using LoopMatrix = Eigen::Matrix<double, kAllStates, kAllStates>;
using Row = Eigen::Matrix<double, 1, kAllStates>;

/// The train over one sample with the command held.
TrainMatrix over_a_sample(const AxisModel& model, double more_viscous) {
  const GearTrain& gear = model.gear;
  const AxisLoad& load = model.load;
  const double rotor = model.reflected_inertia_kgm2(), k = gear.stiffness_Nmprad,
               d = gear.damping_Nmsprad, rubs = gear.ratio * gear.ratio * gear.viscous_Nmsprad,
               lag = 2 * std::numbers::pi * model.control.current_bandwidth_Hz;
  TrainMatrix rate = TrainMatrix::Zero();
  rate(kRotor, kRotorSpeed) = rate(kLoad, kLoadSpeed) = 1;
  rate.row(kRotorSpeed) << -k / rotor, -(d + rubs) / rotor, k / rotor, d / rotor, 1 / rotor, 0;
  rate.row(kLoadSpeed) << k, d, -k - load.cable_stiffness_Nmprad,
      -d - load.viscous_Nmsprad - more_viscous, 0, 0;
  rate.row(kLoadSpeed) /= load.inertia_kgm2;
  rate(kTorque, kTorque) = -lag;
  rate(kTorque, kCommand) = lag;
  const TrainMatrix scaled = rate / model.control.control_rate_Hz;
  return scaled.exp();
}

LoopMatrix loop_matrix(const AxisModel& model, double more_viscous) {
  const AxisControl& control = model.control;
  const double dt = 1 / control.control_rate_Hz;
  const double blend = control.estimator_blend();
  const auto unit = [](int state) { return Row::Unit(state); };
  const Row reading = unit(control.encoder_at_output ? kLoad : kRotor);
  const Row speed = (1 - blend) * unit(kSpeed) + blend / dt * (reading - unit(kLast));
  const Row error = -control.position_gain_1ps * reading - speed;
  LoopMatrix matrix = LoopMatrix::Zero();
  matrix.topLeftCorner<kTrainStates, kTrainStates>() = over_a_sample(model, more_viscous);
  matrix.row(kCommand) = control.speed_gain_Nmsprad * error + unit(kIntegral);
  matrix.row(kLast) = reading;
  matrix.row(kSpeed) = speed;
  matrix.row(kIntegral) = unit(kIntegral) + control.speed_integral_gain_Nmprad * dt * error;
  return matrix;
}

}  // namespace

std::vector<std::complex<double>> loop_poles_1ps(const AxisModel& model,
                                                 double more_viscous_Nmsprad) {
  const LoopMatrix matrix = loop_matrix(model, more_viscous_Nmsprad);
  if (!matrix.allFinite()) return {};
  const Eigen::EigenSolver<LoopMatrix> solver(matrix, false);
  if (solver.info() != Eigen::Success) return {};
  std::vector<std::complex<double>> poles;
  for (const std::complex<double>& pole : solver.eigenvalues())
    poles.push_back(std::log(pole) * model.control.control_rate_Hz);
  return poles;
}

bool is_steady(const AxisModel& model, double more_viscous_Nmsprad) {
  const double most = kSlack * model.control.control_rate_Hz;
  const auto poles = loop_poles_1ps(model, more_viscous_Nmsprad);
  return !poles.empty() &&
         std::ranges::all_of(poles, [&](const auto& pole) { return pole.real() <= most; });
}

}  // namespace gazewright
