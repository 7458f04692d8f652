#include "core/loads/section.h"

#include <algorithm>
#include <cmath>

namespace gazewright {
namespace {

bool is_full(const Section& s) {
  return s.wall_m <= 0 || 2 * s.wall_m >= std::min(s.width_m, s.height_m);
}

/// A bar: the part of the full section's stiffness, and of its weight.
double bar_fill(const Section& s) { return s.wall_m <= 0 && s.fill > 0 ? s.fill : 1; }

double cube(double x) { return x * x * x; }

}  // namespace

double rectangle_torsion_m4(double side_m, double other_m) {
  const double a = std::max(side_m, other_m), b = std::min(side_m, other_m), r = b / a;
  return a * cube(b) * (1.0 / 3 - 0.21 * r * (1 - r * r * r * r / 12));
}

double tube_torsion_m4(double width_m, double height_m, double wall_m) {
  const double w = width_m - wall_m, h = height_m - wall_m;
  return 4 * w * h * w * h * wall_m / (2 * (w + h));
}

SectionValues values_of(const Section& s) {
  const double w = s.width_m, h = s.height_m;
  const double outer = w * h, wide = h * cube(w) / 12, high = w * cube(h) / 12;
  if (is_full(s)) {
    const double fill = bar_fill(s), stiff = fill * fill;
    return {stiff * outer, fill * outer, stiff * wide, stiff * high,
            stiff * rectangle_torsion_m4(w, h)};
  }
  const double wi = w - 2 * s.wall_m, hi = h - 2 * s.wall_m, stiff = s.fill * s.fill;
  const double tube = std::min(tube_torsion_m4(w, h, s.wall_m), rectangle_torsion_m4(w, h));
  return {outer - (1 - stiff) * wi * hi, outer - (1 - s.fill) * wi * hi,
          wide - (1 - stiff) * hi * cube(wi) / 12, high - (1 - stiff) * wi * cube(hi) / 12,
          tube + stiff * rectangle_torsion_m4(wi, hi)};
}

double torsion_stress_Pa(const Section& s, double torque_Nm) {
  const double torque = std::abs(torque_Nm);
  if (!is_full(s)) {
    const double area = (s.width_m - s.wall_m) * (s.height_m - s.wall_m);
    return torque / (2 * area * s.wall_m);
  }
  const double a = std::max(s.width_m, s.height_m), b = std::min(s.width_m, s.height_m);
  const double r = b / a, fill = bar_fill(s);
  const double more = 1 + r * (0.6095 + r * (0.8865 + r * (-1.8023 + r * 0.9100)));
  return 3 * torque / (a * b * b) * more / (fill * fill);
}

}  // namespace gazewright
