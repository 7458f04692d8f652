#include <algorithm>
#include <span>

#include "app/batch/output.h"
#include "app/batch/verbs.h"
#include "core/analysis/missing.h"
#include "core/analysis/say.h"
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

/// Says what it lacks, of all these axes at once, where one of them has no step.
std::optional<int> lacks_step(const Analysis& analysis, std::span<const Axis> axes,
                              const LoadedRig& loaded, const Command& command) {
  std::vector<std::string> names, missing;
  for (const Axis axis : axes) {
    if (!analysis.of(axis).step.time_s.empty()) continue;
    names.emplace_back(name_of(axis));
    const Figure* figure = analysis.figure(names.back() + ".step.rise_time");
    for (std::string& entry : said_needs(figure ? figure->because : ""))
      if (std::ranges::find(missing, entry) == missing.end()) missing.push_back(std::move(entry));
  }
  if (names.empty()) return {};
  return complain_of_missing(
      "a trace of " + names.front() + (names.size() > 1 ? " and " + names.back() : ""),
      missing.empty() ? "lacks inputs" : say_needs(missing), loaded, command.file());
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

int run_both(const LoadedRig& loaded, const Analysis& analysis, const Command& command) {
  if (const auto status = lacks_step(analysis, kAxes, loaded, command)) return *status;
  PanTilt move_rad{analysis.of(Axis::pan).move_rad, analysis.of(Axis::tilt).move_rad};
  if (command.hold) (*command.hold == Axis::pan ? move_rad.pan : move_rad.tilt) = 0;
  const CoupledTrace trace =
      simulate_both(coupled_model(with_defaults(*loaded.rig)), move_rad, command.duration_s);
  return write_trace(rows_of(trace), trace.axis[0], "pan or tilt", command.duration_s);
}

}  // namespace

int run_trace(const LoadedRig& loaded, const Command& command) {
  const Rig& rig = *loaded.rig;
  const Analysis analysis = analyse(rig, {.quick = true});
  if (command.both) return run_both(loaded, analysis, command);
  const Axis axis = command.axis.value_or(Axis::pan);
  if (const auto status = lacks_step(analysis, {&axis, 1}, loaded, command)) return *status;
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
