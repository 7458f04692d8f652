#pragma once

#include <algorithm>
#include <bit>
#include <cmath>
#include <limits>

/// Numbers of both axes side by side in one register (two doubles, which every x86-64 and arm64
/// has), and the few functions that formulas need to be written once for one axis and for both.
namespace gazewright {

using BothAxes = double __attribute__((vector_size(16)));  ///< pan, tilt
using BothMasks = decltype(BothAxes{} < BothAxes{});       ///< all bits set where true

template <class Number>
inline constexpr int kLanes = 1;
template <>
inline constexpr int kLanes<BothAxes> = 2;

inline double lane_of(double x, int) { return x; }
inline double lane_of(BothAxes x, int lane) { return x[lane]; }
inline void set_lane(double& x, int, double value) { x = value; }
inline void set_lane(BothAxes& x, int lane, double value) { x[lane] = value; }

inline double sum_of(double x) { return x; }
inline double sum_of(BothAxes x) { return x[0] + x[1]; }
inline double largest_of(double x) { return x; }
inline double largest_of(BothAxes x) { return std::max(x[0], x[1]); }

inline double select(bool is, double yes, double no) { return is ? yes : no; }
inline BothAxes select(BothMasks is, BothAxes yes, BothAxes no) { return is ? yes : no; }
/// A bit for each lane that is true.
inline unsigned bits_of(bool is) { return static_cast<unsigned>(is); }
inline unsigned bits_of(BothMasks is) {
  return static_cast<unsigned>(is[0] & 1) | static_cast<unsigned>(is[1] & 2);
}

/// The bits of a register, for what signs need.
inline BothMasks pattern_of(BothAxes x) { return std::bit_cast<BothMasks>(x); }
inline constexpr BothMasks kSignBits = {std::numeric_limits<long>::min(),
                                        std::numeric_limits<long>::min()};

inline double magnitude(double x) { return std::abs(x); }
inline BothAxes magnitude(BothAxes x) {
  return std::bit_cast<BothAxes>(pattern_of(x) & ~kSignBits);
}
inline double with_sign(double size, double sign) { return std::copysign(size, sign); }
inline BothAxes with_sign(BothAxes size, BothAxes sign) {
  return std::bit_cast<BothAxes>((pattern_of(size) & ~kSignBits) | (pattern_of(sign) & kSignBits));
}
/// x, or −x where `by` is negative.
inline BothAxes flipped(BothAxes x, BothAxes by) {
  return std::bit_cast<BothAxes>(pattern_of(x) ^ (pattern_of(by) & kSignBits));
}
/// Within ±1; NaN stays.
inline double saturated(double x) { return std::clamp(x, -1.0, 1.0); }
inline BothAxes saturated(BothAxes x) {
  const BothAxes one{1, 1};
  return x > one ? one : x < -one ? -one : x;
}
inline double exp_of(double x) { return std::exp(x); }
inline BothAxes exp_of(BothAxes x) { return BothAxes{std::exp(x[0]), std::exp(x[1])}; }

}  // namespace gazewright
