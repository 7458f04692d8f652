#pragma once

#include <cstdlib>

/// A test's tolerance, times the environment's TOL_SCALE (default 1). TOL_SCALE=0 makes every
/// comparison that is not exact fail and so prints the true residuals.
inline double tol(double tolerance) {
  const char* scale = std::getenv("TOL_SCALE");
  return scale == nullptr ? tolerance : tolerance * std::atof(scale);
}
