#pragma once

#include <Eigen/Core>
#include <algorithm>
#include <cmath>

/// Linear equations x' = A·x + b carried over a time in closed form.
namespace gazewright {

/// x after the time is gain·x + shift.
template <int N>
struct Flow {
  Eigen::Matrix<double, N, N> gain = Eigen::Matrix<double, N, N>::Identity();
  Eigen::Matrix<double, N, 1> shift = Eigen::Matrix<double, N, 1>::Zero();

  Eigen::Matrix<double, N, 1> after(const Eigen::Matrix<double, N, 1>& x) const {
    return gain * x + shift;
  }
  /// First this one, then the other.
  Flow then(const Flow& next) const { return {next.gain * gain, next.gain * shift + next.shift}; }
};

template <int N>
struct LinearRate {
  Eigen::Matrix<double, N, N> gain = Eigen::Matrix<double, N, N>::Zero();
  Eigen::Matrix<double, N, 1> constant = Eigen::Matrix<double, N, 1>::Zero();

  Eigen::Matrix<double, N, 1> at(const Eigen::Matrix<double, N, 1>& x) const {
    return gain * x + constant;
  }

  /// The matrix exponential of (A b; 0 0)·t by scaling and squaring (Golub & Van Loan, Matrix
  /// Computations, 11.3; from memory): the Taylor series of order 12 below a norm of 1/4 is exact
  /// to 1e-17. Works where A is singular too; not finite where the flow is beyond double precision.
  Flow<N> over(double time_s) const {
    using Matrix = Eigen::Matrix<double, N + 1, N + 1>;
    Matrix rate = Matrix::Zero();
    rate.template topLeftCorner<N, N>() = gain * time_s;
    rate.template topRightCorner<N, 1>() = constant * time_s;
    const double norm = rate.cwiseAbs().colwise().sum().maxCoeff();
    if (!std::isfinite(norm)) return {rate.template topLeftCorner<N, N>() * NAN, constant * NAN};
    const int halvings = std::clamp(norm > 0 ? std::ilogb(norm) + 3 : 0, 0, 1100);
    rate *= std::ldexp(1.0, -halvings);
    Matrix power = Matrix::Identity();
    for (int k = 12; k > 0; --k) power = Matrix::Identity() + rate * power / k;
    for (int k = 0; k < halvings; ++k) power = (power * power).eval();
    return {power.template topLeftCorner<N, N>(), power.template topRightCorner<N, 1>()};
  }
};

}  // namespace gazewright
