#include "app/batch/output.h"
#include "app/batch/verbs.h"
#include "core/motion/coupled.h"
#include "core/motion/planned_trace.h"
#include "core/rig/fields.h"

namespace gazewright::batch {
namespace {

std::string rows_of(const Trace& trace) {
  std::string text = "time_s,angle_rad,speed_rad_s,motor_angle_rad,current_A,bus_A\n";
  for (std::size_t i = 0; i < trace.time_s.size(); ++i)
    text += csv_line({trace.time_s[i], trace.angle_rad[i], trace.speed_radps[i],
                      trace.motor_angle_rad[i], trace.current_A[i], trace.bus_A[i]});
  return text;
}

std::string rows_of(const CoupledTrace& both) {
  std::string text = "time_s";
  for (const Axis axis : kAxes)
    for (const char* column : {"angle_rad", "speed_rad_s", "motor_angle_rad", "current_A"})
      text += std::string(",") + name_of(axis) + '_' + column;
  text += ",bus_A\n";
  for (std::size_t i = 0; i < both.bus_A.size(); ++i) {
    std::vector<double> row{both.axis[0].time_s[i]};
    for (const Trace& trace : both.axis)
      row.insert(row.end(), {trace.angle_rad[i], trace.speed_radps[i], trace.motor_angle_rad[i],
                             trace.current_A[i]});
    row.push_back(both.bus_A[i]);
    text += csv_line(row);
  }
  return text;
}

/// Says that it lacks inputs, where an axis has no step.
std::optional<int> lacks_step(const Analysis& analysis, Axis axis) {
  if (!analysis.of(axis).step.time_s.empty()) return {};
  const std::string name = name_of(axis);
  const Figure* figure = analysis.figure(name + ".step.rise_time");
  return complain_of_missing("a trace of " + name, figure ? figure->because : "lacks inputs");
}

/// Writes the rows; a trace that ended early is said so.
int write_trace(const std::string& rows, const Trace& trace, const std::string& who,
                double duration_s) {
  const int status = write_out(rows);
  if (status == kDone && trace.time_s.back() < duration_s - 2 * trace.sample_time_s)
    return complain("the loop of " + who + " runs away; the trace ends at " +
                        number(trace.time_s.back()) + " s",
                    "lower its gains", kDone);
  return status;
}

int run_both(const Rig& rig, const Analysis& analysis, const Command& command) {
  for (const Axis axis : kAxes)
    if (const auto status = lacks_step(analysis, axis)) return *status;
  PanTilt move_rad{analysis.of(Axis::pan).move_rad, analysis.of(Axis::tilt).move_rad};
  if (command.hold) (*command.hold == Axis::pan ? move_rad.pan : move_rad.tilt) = 0;
  const CoupledTrace trace =
      simulate_both(coupled_model(with_defaults(rig)), move_rad, command.duration_s);
  return write_trace(rows_of(trace), trace.axis[0], "pan or tilt", command.duration_s);
}

}  // namespace

int run_trace(const Rig& rig, const Command& command) {
  const Analysis analysis = analyse(rig, {.quick = true});
  if (command.both) return run_both(rig, analysis, command);
  const Axis axis = command.axis.value_or(Axis::pan);
  if (const auto status = lacks_step(analysis, axis)) return *status;
  const Rig filled = with_defaults(rig);
  const AxisModel model = axis_model(filled, rig_bodies(filled), axis);
  const auto profile = plan(command.profile, model, analysis.of(axis).move_rad);
  if (!profile)
    return complain(std::string(name_of(axis)) + " has no " +
                        std::string(word_of(command.profile)) +
                        " move: torque below friction, gravity and cable",
                    "leave --profile out to see its answer to a step", kBadRig);
  const Trace trace = simulate_planned(model, *profile, command.duration_s);
  return write_trace(rows_of(trace), trace, name_of(axis), command.duration_s);
}

}  // namespace gazewright::batch
