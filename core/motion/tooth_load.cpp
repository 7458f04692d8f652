#include "core/motion/tooth_load.h"

#include <algorithm>
#include <cmath>

#include "core/motion/drive_train.h"

namespace gazewright {
namespace {

double torque_Nm(const DriveTrain<double>& train, const Trace& trace, std::size_t k) {
  return std::abs(train.tooth_torque_Nm({trace.motor_angle_rad[k], trace.angle_rad[k]},
                                        {trace.motor_speed_radps[k], trace.speed_radps[k]}));
}

}  // namespace

ToothPeak tooth_peak(const AxisModel& model, const Trace& trace, double until_s) {
  const DriveTrain<double> train({&model});
  ToothPeak peak;
  for (std::size_t k = 0; k < trace.time_s.size() && trace.time_s[k] <= until_s; ++k) {
    peak.input_radps = std::max(peak.input_radps, std::abs(trace.motor_speed_radps[k]));
    const double torque = torque_Nm(train, trace, k);
    if (torque <= peak.torque_Nm) continue;
    peak.torque_Nm = torque;
    peak.at_s = trace.time_s[k];
  }
  return peak;
}

void ToothWear::add(const ToothWear& more, double times) {
  cube_Nm3rad += times * more.cube_Nm3rad;
  angle_rad += times * more.angle_rad;
}

double ToothWear::mean_Nm() const { return angle_rad > 0 ? std::cbrt(cube_Nm3rad / angle_rad) : 0; }

ToothWear tooth_wear(const AxisModel& model, const Trace& trace) {
  const DriveTrain<double> train({&model});
  ToothWear wear;
  for (std::size_t k = 0; k < trace.time_s.size(); ++k) {
    const double torque = torque_Nm(train, trace, k);
    const double turned_rad = std::abs(trace.speed_radps[k]) * trace.sample_time_s;
    wear.cube_Nm3rad += torque * torque * torque * turned_rad;
    wear.angle_rad += turned_rad;
  }
  return wear;
}

}  // namespace gazewright
