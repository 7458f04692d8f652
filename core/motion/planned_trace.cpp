#include "core/motion/planned_trace.h"

#include <cmath>

namespace gazewright {

Trace simulate_planned(const AxisModel& model, const Profile& profile, double duration_s) {
  if (profile.kind == ProfileKind::step) return simulate_step(model, profile.move_rad, duration_s);
  // As long as asked for, cut off or held at the target; all of it is in the band.
  Profile path = profile;
  path.pieces.push_back({profile.time_s, {profile.move_rad}});
  path.time_s = duration_s;
  Trace trace = simulate_until_settled(model, path, kInfinity).trace;
  const double rows = std::floor(duration_s / trace.sample_time_s + 1e-6) + 1;
  for (auto* column : {&trace.time_s, &trace.angle_rad, &trace.speed_radps, &trace.motor_angle_rad,
                       &trace.current_A, &trace.bus_A, &trace.motor_speed_radps})
    if (static_cast<double>(column->size()) > rows) column->resize(static_cast<std::size_t>(rows));
  return trace;
}

}  // namespace gazewright
