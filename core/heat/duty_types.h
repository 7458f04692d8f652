#pragma once

#include "core/heat/thermal_model.h"

/// What a turning motor bears for a short time or with rests: duty types of IEC 60034-1, winding
/// and housing as two heat capacities, copper fed back. No gear loss, as for the lasting current.
namespace gazewright {

/// S2, short time: as warm as the air at the start, cools fully afterwards. Phase amplitude that
/// heats the winding just to `limit_K` in `time_s`. [A]
/// @param most_A  what motor and drive let through; returned where that does not heat it so far
/// @returns 0 where the air is that hot
double short_time_current_A(const MotorThermal& motor, double phase_resistance_ohm, double limit_K,
                            double time_s, double most_A);

/// S3, intermittent: `on_s` at that current, `off_s` without any, again and again; the winding at
/// its hottest. Else as above. @pre on_s > 0
double intermittent_current_A(const MotorThermal& motor, double phase_resistance_ohm,
                              double limit_K, double on_s, double off_s, double most_A);

}  // namespace gazewright
