#pragma once

#include <cmath>
#include <cstdint>
#include <numbers>

namespace gazewright {

/// Numbers that look like chance and are the same on every machine, one for each count.
/// Source: SplitMix64, Steele, Lea & Flood, OOPSLA 2014 (constants from memory); normal numbers by
/// Box & Muller, Annals of Mathematical Statistics 29 (1958).
class Chance {
 public:
  explicit Chance(std::uint64_t seed) : seed_(seed) {}

  /// Above 0, up to 1.
  double uniform(std::uint64_t count) const {
    std::uint64_t z = seed_ + (count + 1) * 0x9E3779B97F4A7C15U;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
    z ^= z >> 31U;
    return (static_cast<double>(z >> 11U) + 1) * 0x1p-53;
  }
  /// Mean 0, standard deviation 1; takes the uniform numbers `count` and `count` + 1.
  double normal(std::uint64_t count) const {
    return std::sqrt(-2 * std::log(uniform(count))) *
           std::cos(2 * std::numbers::pi * uniform(count + 1));
  }

 private:
  std::uint64_t seed_;
};

}  // namespace gazewright
