#pragma once

/// Copper's resistance against temperature, and thermal classes of insulation.
namespace gazewright {

inline constexpr double kTwentyCelsius_K = 293.15, kIceCelsius_K = 273.15;
/// Copper's resistance is proportional to this plus the temperature in °C. Source: IEC 60034-1,
/// resistance method (from memory).
inline constexpr double kCopperConstant = 235;
/// Growth of the resistance per kelvin, of that at 20 °C: 0.00392.
inline constexpr double kCopper_perK = 1 / (kCopperConstant + 20);

/// Resistance at one temperature over that at another.
/// @param constant  1/α − θ for a coefficient α given at θ °C
constexpr double resistance_ratio(double from_K, double to_K, double constant = kCopperConstant) {
  return (constant + to_K - kIceCelsius_K) / (constant + from_K - kIceCelsius_K);
}
/// The temperature at which the resistance has grown by `ratio`. [K]
constexpr double temperature_by_resistance_K(double from_K, double ratio,
                                             double constant = kCopperConstant) {
  return ratio * (constant + from_K - kIceCelsius_K) - constant + kIceCelsius_K;
}

}  // namespace gazewright
