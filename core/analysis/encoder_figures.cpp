#include "core/analysis/commutation.h"
#include "core/analysis/figures.h"
#include "core/analysis/magnet_values.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kEncoderSource = "surface charge of a uniform magnet; handbook: homing";
constexpr std::array<InputPath, 2> kRim{"<axis>.encoder.magnet_offset",
                                        "<axis>.encoder.magnet_diameter"};

Answer magnet_error(Context& c, Axis a) {
  return {magnet_error_rad(c, a),
          words("the sensor is more than half the magnet's radius off its axis")};
}

Answer eccentricity(Context& c, Axis a) {
  const Encoder& encoder = c.rig().axis(a).encoder;
  return eccentricity_error_rad(encoder.magnet_offset_m.value(),
                                encoder.magnet_diameter_m.value() / 2);
}

Answer commutation(Context& c, Axis a) {
  CommutationError error = commutation_error(c, a);
  if (error.electrical_rad) return *error.electrical_rad;
  return error.has_own_sensor ? Answer::aside(std::move(error.because))
                              : Answer::none(std::move(error.because));
}

const FigureRow kEncoderFigures[] = {
    {{"<axis>.encoder.commutation_error", "Commutation angle off by, electrical", "rad", "deg",
      "pole pairs·(error + half a count); at the output times N, with half the gap and "
      "torque_stall/stiffness",
      "geometry; handbook: homing", kCommutation},
     Axes::both,
     commutation},
    {{"<axis>.drive.samples_per_turn", "Control samples in an electrical turn at top speed", "1",
      "1", "2π·control rate/(pole pairs·N·speed_top)", "geometry; handbook: homing",
      kSamplesPerTurn},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return samples_per_electrical_turn(c, a); }},
    {{"<axis>.encoder.field", "Field at the encoder's sensor", "T", "mT",
      "(Br/4)·((z + L)/√((z + L)² + R²) − z/√(z² + R²))", kEncoderSource, kMagnet},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return magnet_field_at_sensor_T(c, a); },
     true},
    {{"<axis>.encoder.magnet_error", "Angle error from the magnet's offset and tilt", "rad", "deg",
      "half the range of field direction less angle over a turn, worst tilt direction",
      kEncoderSource, kOffAxis},
     Axes::both,
     magnet_error,
     true},
    {{"<axis>.encoder.eccentricity", "Error of the same offset, read at the magnet's rim", "rad",
      "deg", "offset/R, as of a ring or scale", "geometry: ±e/R; handbook: homing", kRim},
     Axes::both,
     eccentricity,
     true},
};

}  // namespace

std::span<const FigureRow> encoder_figures() { return kEncoderFigures; }

}  // namespace gazewright
