#pragma once

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/travel/magnet.h"

/// What figures and findings of the encoder's magnet share.
namespace gazewright {

inline constexpr std::array<InputPath, 3> kMagnet{"<axis>.encoder.magnet_gap",
                                                  "<axis>.encoder.magnet_diameter",
                                                  "<axis>.encoder.magnet_thickness"};

/// What its offset and tilt bend the reading by needs.
inline constexpr std::array<InputPath, 5> kOffAxis{
    "<axis>.encoder.magnet_gap", "<axis>.encoder.magnet_diameter",
    "<axis>.encoder.magnet_thickness", "<axis>.encoder.magnet_offset",
    "<axis>.encoder.magnet_tilt"};

inline DiscMagnet magnet_of(const Encoder& encoder) {
  return {.diameter_m = encoder.magnet_diameter_m.value(),
          .thickness_m = encoder.magnet_thickness_m.value(),
          .remanence_T = encoder.magnet_remanence_T.value()};
}

inline double magnet_field_at_sensor_T(Context& c, Axis a) {
  const Encoder& encoder = c.rig().axis(a).encoder;
  return magnet_axis_field_T(magnet_of(encoder), encoder.magnet_gap_m.value());
}

/// Empty where the sensor is too far off the axis for the model, more than half the radius.
struct MagnetError {
  std::optional<double> rad;
};
inline const std::optional<double>& magnet_error_rad(Context& c, Axis a) {
  const auto make = [&]() -> MagnetError {
    const Encoder& encoder = c.rig().axis(a).encoder;
    const double offset = encoder.magnet_offset_m.value();
    if (offset > encoder.magnet_diameter_m.value() / 4) return {};
    return {magnet_angle_error_rad(magnet_of(encoder), encoder.magnet_gap_m.value(), offset,
                                   encoder.magnet_tilt_rad.value())};
  };
  return c.kept<MagnetError>(a, make).rad;
}

}  // namespace gazewright
