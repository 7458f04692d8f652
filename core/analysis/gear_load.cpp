#include "core/analysis/gear_load.h"

#include <cmath>

#include "core/analysis/heat_values.h"

namespace gazewright {

const ToothPeak& step_tooth_peak(Context& c, Axis a) {
  return c.kept<ToothPeak>(a, [&] {
    const SettledStep& step = c.step(a);
    return tooth_peak(c.model(a), step.trace, step.figures.settle_time_s.value_or(kInfinity));
  });
}

bool step_runs_away(Context& c, Axis a) {
  const auto& angle = c.step(a).trace.angle_rad;
  return angle.empty() || std::abs(angle.back()) > 100 * std::abs(c.move_rad(a));
}

const DutyTooth& duty_tooth(Context& c, Axis a) {
  return c.kept<DutyTooth>(a, [&] {
    ToothWear sum;
    DutyTooth tooth;
    tooth.because =
        each_duty_move(c, a, [&](const AxisModel& model, const Trace& trace, double times) {
          sum.add(tooth_wear(model, trace), times);
        });
    tooth.mean_Nm = sum.mean_Nm();
    return tooth;
  });
}

}  // namespace gazewright
