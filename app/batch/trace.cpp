#include "app/batch/output.h"
#include "app/batch/verbs.h"
#include "core/bodies/bodies.h"
#include "core/motion/axis_model.h"
#include "core/motion/step.h"
#include "core/rig/fields.h"

namespace gazewright::batch {
namespace {

std::string rows_of(const Trace& trace) {
  std::string text = "time_s,angle_rad,speed_rad_s,motor_angle_rad,current_A,bus_A\n";
  for (std::size_t i = 0; i < trace.time_s.size(); ++i) {
    const double row[] = {trace.time_s[i],          trace.angle_rad[i], trace.speed_radps[i],
                          trace.motor_angle_rad[i], trace.current_A[i], trace.bus_A[i]};
    for (const double& value : row) text += (&value == row ? "" : ",") + number(value);
    text += '\n';
  }
  return text;
}

}  // namespace

int run_trace(const Rig& rig, const Command& command) {
  const Axis axis = command.axis.value_or(Axis::pan);
  const Analysis analysis = analyse(rig, {.remedies = false, .profiles = false});
  const AxisCurves& curves = analysis.of(axis);
  const std::string name = name_of(axis);
  if (curves.step.time_s.empty()) {
    const Figure* figure = analysis.figure(name + ".step.rise_time");
    return complain("the rig cannot give a trace of " + name + ": it " +
                        (figure ? figure->because : std::string("lacks inputs")),
                    "add the missing values to the rig file", kBadRig);
  }
  const Rig filled = with_defaults(rig);
  const Trace trace = simulate_step(axis_model(filled, rig_bodies(filled), axis), curves.move_rad,
                                    command.duration_s);
  const int status = write_out(rows_of(trace));
  if (status == kDone && trace.time_s.back() < command.duration_s - 2 * trace.sample_time_s)
    return complain("the loop of " + name + " runs away; the trace ends at " +
                        number(trace.time_s.back()) + " s",
                    "lower its gains", kDone);
  return status;
}

}  // namespace gazewright::batch
