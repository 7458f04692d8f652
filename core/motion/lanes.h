#pragma once

#include <algorithm>
#include <bit>
#include <cmath>
#include <type_traits>
#ifdef __AVX2__
#include <immintrin.h>
#endif

/// Numbers side by side in one register, and the few functions that formulas need to be written
/// once for one number and for several. Every lane gets the bits that a double would get: no
/// operation is left to the mathematics library, none is contracted.
///
/// Sources that are compiled for wider registers than every machine has (step_lanes_*.cpp) may use
/// of this only what has a vector type among its template arguments: an inline function of doubles
/// that they leave behind could be the one that the linker takes for all machines.
namespace gazewright {

/// Two doubles, which every x86-64 and arm64 has: pan, tilt. Both share one time.
using BothAxes = double __attribute__((vector_size(16)));

template <class Number>
inline constexpr int kLanes = sizeof(Number) / sizeof(double);
template <class Number>
inline constexpr bool kIsOne = std::is_same_v<Number, double>;
/// Whether each lane has a time of its own.
template <class Number>
inline constexpr bool kHasOwnTimes = kIsOne<Number> || (kLanes<Number> > 2);
template <class Number>
using TimeOf = std::conditional_t<kHasOwnTimes<Number>, Number, double>;
template <class Number>
using MaskOf = decltype(Number{} < Number{});  ///< of vectors: all bits set where true
template <class Number>
concept Vector = !std::is_arithmetic_v<Number> && requires(Number x) {
  x + x < x;
};
/// A number for each lane, with a bit for each of several questions; one for both axes.
template <class Number>
struct Regions {
  using Type = unsigned;
};
template <class Number>
requires(kLanes<Number> > 2) struct Regions<Number> {
  using Type = MaskOf<Number>;
};
template <class Number>
using RegionOf = typename Regions<Number>::Type;

inline double lane_of(double x, int) { return x; }
template <Vector Number>
double lane_of(Number x, int lane) {
  return x[lane];
}
inline void set_lane(double& x, int, double value) { x = value; }
template <Vector Number, class Value>
void set_lane(Number& x, int lane, Value value) {
  x[lane] = value;
}

inline bool any_of(bool is) { return is; }
inline bool all_of(bool is) { return is; }
/// A bit for each lane that is true.
inline unsigned bits_of(bool is) { return static_cast<unsigned>(is); }
template <Vector Mask>
[[gnu::always_inline]] inline unsigned bits_of(Mask is) {
  if constexpr (sizeof(Mask) == 16) {
    return static_cast<unsigned>(is[0] & 1) | static_cast<unsigned>(is[1] & 2);
#ifdef __AVX512DQ__
  } else if constexpr (sizeof(Mask) == 64) {
    return static_cast<unsigned>(_mm512_movepi64_mask((__m512i)is));
#endif
#ifdef __AVX2__
  } else if constexpr (sizeof(Mask) == 32) {
    return static_cast<unsigned>(_mm256_movemask_pd((__m256d)is));
#endif
  }
}
template <Vector Mask>
[[gnu::always_inline]] inline bool any_of(Mask is) {
  return bits_of(is) != 0;
}
template <Vector Mask>
[[gnu::always_inline]] inline bool all_of(Mask is) {
  return bits_of(is) == (1U << kLanes<Mask>)-1;
}

inline double select(bool is, double yes, double no) { return is ? yes : no; }
inline unsigned select(bool is, unsigned yes, unsigned no) { return is ? yes : no; }
template <Vector Mask, Vector Number>
[[gnu::always_inline]] inline Number select(Mask is, Number yes, Number no) {
  return is ? yes : no;
}
/// One more question of a region.
inline void add_bit(unsigned& region, bool is) { region = region << 1 | bits_of(is); }
template <Vector Mask>
void add_bit(unsigned& region, Mask is) {
  region = region << kLanes<Mask> | bits_of(is);
}
template <Vector Mask>
void add_bit(Mask& region, Mask is) {
  region = (region << 1) - is;
}
/// All lanes alike.
template <class Number>
Number all(double x) {
  return Number{} + x;
}
/// As std::min and std::max: the first where one of them is no number.
template <class Number>
Number least_of(Number a, Number b) {
  return select(b < a, b, a);
}
template <class Number>
Number most_of(Number a, Number b) {
  return select(a < b, b, a);
}

inline double sum_of(BothAxes x) { return x[0] + x[1]; }
/// Largest and least of the lanes that share a time.
template <class Number>
TimeOf<Number> largest_of(Number x) {
  if constexpr (kHasOwnTimes<Number>)
    return x;
  else
    return std::max(x[0], x[1]);
}
template <class Number>
TimeOf<Number> smallest_of(Number x) {
  if constexpr (kHasOwnTimes<Number>)
    return x;
  else
    return std::min(x[0], x[1]);
}

/// The bits of a register, for what signs need.
template <Vector Number>
MaskOf<Number> pattern_of(Number x) {
  return std::bit_cast<MaskOf<Number>>(x);
}
inline double magnitude(double x) { return std::abs(x); }
template <Vector Number>
[[gnu::always_inline]] inline Number magnitude(Number x) {
  return std::bit_cast<Number>(pattern_of(x) & ~pattern_of(-Number{}));
}
inline double with_sign(double size, double sign) { return std::copysign(size, sign); }
template <Vector Number>
[[gnu::always_inline]] inline Number with_sign(Number size, Number sign) {
  const auto bit = pattern_of(-Number{});
  return std::bit_cast<Number>((pattern_of(size) & ~bit) | (pattern_of(sign) & bit));
}
/// x, or −x where `by` is negative.
template <Vector Number>
[[gnu::always_inline]] inline Number flipped(Number x, Number by) {
  return std::bit_cast<Number>(pattern_of(x) ^ (pattern_of(by) & pattern_of(-Number{})));
}
/// Within ±1; NaN stays.
template <class Number>
Number saturated(Number x) {
  const Number one = all<Number>(1);
  return select(x < -one, -one, select(one < x, one, x));
}
template <class Number>
auto is_finite(Number x) {
  return magnitude(x) < all<Number>(__builtin_inf());
}

inline double root_of(double x) { return std::sqrt(x); }
inline double floor_of(double x) { return std::floor(x); }
template <Vector Number>
[[gnu::always_inline]] inline Number root_of(Number x) {
#ifdef __AVX512F__
  if constexpr (sizeof(Number) == 64) return (Number)_mm512_sqrt_pd((__m512d)x);
#endif
#ifdef __AVX2__
  if constexpr (sizeof(Number) == 32) return (Number)_mm256_sqrt_pd((__m256d)x);
#endif
  for (int i = 0; i < kLanes<Number>; ++i) x[i] = __builtin_sqrt(x[i]);
  return x;
}
template <Vector Number>
[[gnu::always_inline]] inline Number floor_of(Number x) {
#ifdef __AVX512F__
  if constexpr (sizeof(Number) == 64)
    return (Number)_mm512_roundscale_pd((__m512d)x, _MM_FROUND_TO_NEG_INF | _MM_FROUND_NO_EXC);
#endif
#ifdef __AVX2__
  if constexpr (sizeof(Number) == 32) return (Number)_mm256_floor_pd((__m256d)x);
#endif
  for (int i = 0; i < kLanes<Number>; ++i) x[i] = __builtin_floor(x[i]);
  return x;
}

template <class Number>
using BitsOf = std::conditional_t<kIsOne<Number>, long, MaskOf<Number>>;

/// x^(−1/4) within 2 % of itself: a quarter of the exponent, straight lines between powers of two,
/// and one step of Newton's method. @pre x > 0, normal
template <class Number>
[[gnu::always_inline]] inline Number per_fourth_root_of(Number x) {
  constexpr long kStart = std::bit_cast<long>(1.0) / 4 * 5;
  const Number first = std::bit_cast<Number>(kStart - (std::bit_cast<BitsOf<Number>>(x) >> 2));
  const Number square = first * first;
  return first * (1.25 - 0.25 * x * (square * square));
}

/// e^(−x) within 2e-14 of itself, x ≥ 0; 0 from 700 on. A power of two times the series of what is
/// left, |r| ≤ ln 2/2; ln 2 in two parts, so that the product with the first is exact.
template <class Number>
[[gnu::always_inline]] inline Number decay_of(Number x) {
  constexpr double kPerLn2 = 1.4426950408889634, kLn2 = 0x1.62e42fefa0000p-1,
                   kRest = 0x1.cf79abc9e3b39p-40, kToInteger = 0x1.8p52;
  const Number far = all<Number>(700), y = select(x < far, x, far);
  const Number shifted = kPerLn2 * y + kToInteger, n = shifted - kToInteger;
  const Number r = (n * kLn2 - y) + n * kRest, r2 = r * r, r4 = r2 * r2;
  const Number low = (1 + r) + r2 * (1.0 / 2 + r * (1.0 / 6));
  const Number middle = (1.0 / 24 + r * (1.0 / 120)) + r2 * (1.0 / 720 + r * (1.0 / 5040));
  const Number high = (1.0 / 40320 + r * (1.0 / 362880)) + r2 * (1.0 / 3628800 + r / 39916800);
  using Bits = BitsOf<Number>;
  const auto power =
      Bits(std::bit_cast<Bits>(all<Number>(1)) - (std::bit_cast<Bits>(shifted) << 52));
  const Number value = (low + r4 * (middle + r4 * high)) * std::bit_cast<Number>(power);
  return select(x < far, value, select(x >= far, Number{}, x));  // no number stays none
}

}  // namespace gazewright
