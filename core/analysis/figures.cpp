#include "core/analysis/figures.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/say.h"
#include "core/rig/fields.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

std::span<const std::span<const FigureRow>> row_groups() {
  static const std::array groups{
      mass_figures(),         drive_figures(),   motion_figures(),   loop_figures(),
      coupling_figures(),     limits_figures(),  travel_figures(),   cable_figures(),
      cable_torque_figures(), wire_figures(),    stop_figures(),     power_off_figures(),
      homing_figures(),       encoder_figures(), reach_figures(),    picture_figures(),
      profile_figures(),      smooth_figures(),  tracking_figures(), heat_figures(),
      supply_figures(),       bearing_figures(), joint_figures(),    arm_figures(),
      stand_figures(),        balance_figures(), budget_figures()};
  return groups;
}

bool is_for(Axes axes, Axis axis) {
  return axes == Axes::both || (axes == Axes::tilt_only ? axis == Axis::tilt : axis == Axis::pan);
}

bool is_detail(const std::string& path) {
  const FieldInfo* info = find_info(path);
  return info != nullptr && info->detail;
}

Figure compute(const FigureRow& row, Context& context, Axis axis) {
  Figure figure{for_axis(row.info.id, axis), &row.info, std::nullopt, {}, false};
  if (const auto missing = context.missing(row.info.inputs, axis); !missing.empty()) {
    figure.because = say_needs(missing);
    figure.is_aside = row.is_detail && std::ranges::all_of(missing, is_detail);
    return figure;
  }
  Answer answer = row.compute(context, axis);
  if (answer.value && !std::isfinite(*answer.value)) {
    answer = Answer::none(words("has no finite value with these inputs"));
  }
  figure.value = answer.value;
  figure.because = words(answer.because);
  figure.is_aside = answer.is_aside;
  return figure;
}

}  // namespace

std::vector<Figure> compute_figures(Context& context) {
  std::vector<Figure> figures;
  for (const auto& group : row_groups()) {
    for (const Axis axis : kAxes) {
      for (const FigureRow& row : group) {
        if (is_for(row.axes, axis)) figures.push_back(compute(row, context, axis));
      }
    }
  }
  return figures;
}

std::span<const FigureInfo> figure_table() {
  static const std::vector<FigureInfo> table = [] {
    std::vector<FigureInfo> infos;
    for (const auto& group : row_groups()) {
      for (const FigureRow& row : group) infos.push_back(row.info);
    }
    return infos;
  }();
  return table;
}

std::string why_never_settles(Context& context, Axis axis) {
  const AxisModel& model = context.model(axis);
  const Trace& trace = context.step(axis).trace;
  const double move = context.move_rad(axis);
  if (peak_acceleration_radps2(model) <= 0) {
    return words("cannot move: %1 at the output is not more than friction and gravity",
                 say(stall_torque_Nm(model), "N.m", "N.m"));
  }
  const auto& angle = trace.angle_rad;
  if (angle.empty()) return words("there is no step to look at");
  const auto tail = angle.begin() + static_cast<std::ptrdiff_t>(angle.size() * 8 / 10);
  const auto [least, most] = std::minmax_element(tail, angle.end());
  const std::string end = say(trace.time_s.back(), "s", "s");
  if (std::abs(angle.back()) > 100 * std::abs(move))
    return words("runs away: the loop is unstable");
  if (*most - *least > 2 * context.band_rad()) {
    return words("still swings by ±%1 after %2", say((*most - *least) / 2, "rad", "deg"), end);
  }
  const double off_rad = std::abs(angle.back() - move);
  const bool in_the_gap = off_rad <= 1.05 * model.gear.backlash_rad;
  return words("still %1 from the target after %2%3", say(off_rad, "rad", "deg"), end,
               in_the_gap ? words(": it rests in the gap of the gearbox") : "");
}

}  // namespace gazewright
