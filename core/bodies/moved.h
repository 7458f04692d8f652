#pragma once

#include "core/bodies/bodies.h"

namespace gazewright {

/// The same body seen from another point Q: its centre from there, its inertia about it.
/// Source: parallel-axis theorem, I_O + m·((q² − 2q·c)·1 − q·qᵀ + q·cᵀ + c·qᵀ).
/// @param p_OQ_m  of Q in the frame of `body`; the axes stay.
inline MassProperties seen_from(const MassProperties& body, const Eigen::Vector3d& p_OQ_m) {
  const Eigen::Vector3d &q = p_OQ_m, &c = body.p_OC_m;
  const Eigen::Matrix3d one = Eigen::Matrix3d::Identity();
  return {
      body.mass_kg, c - q,
      body.I_O_kgm2 + body.mass_kg * ((q.squaredNorm() - 2 * q.dot(c)) * one - q * q.transpose() +
                                      q * c.transpose() + c * q.transpose())};
}

}  // namespace gazewright
