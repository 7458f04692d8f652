#pragma once

#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/analysis/context.h"

namespace gazewright {

/// What a figure's formula gives: a value, or why there is none.
struct Answer {
  std::optional<double> value;
  std::string because;
  bool is_aside = false;

  Answer(double v) : value(v) {}  // NOLINT(google-explicit-constructor)
  Answer(std::optional<double> v, std::string why)
      : value(v), because(v ? std::string() : std::move(why)) {}
  static Answer none(std::string why) { return {std::nullopt, std::move(why)}; }
  /// Of no interest for this rig: another kind of part, or details that nobody entered.
  static Answer aside(std::string why) {
    Answer answer = none(std::move(why));
    answer.is_aside = true;
    return answer;
  }
};

/// One row of the figure table. `axes` says for which axes `<axis>` stands.
enum class Axes { both, pan_only, tilt_only, rig };
struct FigureRow {
  FigureInfo info;
  Axes axes;
  Answer (*compute)(Context&, Axis);
  bool is_detail = false;  ///< left aside where only fields for a closer look are missing
};
/// Rows by subject, in the order of design section 6.
std::span<const FigureRow> mass_figures();
std::span<const FigureRow> drive_figures();
std::span<const FigureRow> motion_figures();
std::span<const FigureRow> limits_figures();
std::span<const FigureRow> coupling_figures();
std::span<const FigureRow> loop_figures();
std::span<const FigureRow> travel_figures();
std::span<const FigureRow> cable_figures();
std::span<const FigureRow> wire_figures();
std::span<const FigureRow> cable_torque_figures();
std::span<const FigureRow> stop_figures();
std::span<const FigureRow> power_off_figures();
std::span<const FigureRow> homing_figures();
std::span<const FigureRow> encoder_figures();
std::span<const FigureRow> picture_figures();
std::span<const FigureRow> reach_figures();
std::span<const FigureRow> profile_figures();
std::span<const FigureRow> smooth_figures();
std::span<const FigureRow> tracking_figures();
std::span<const FigureRow> heat_figures();
std::span<const FigureRow> supply_figures();
std::span<const FigureRow> bearing_figures();
std::span<const FigureRow> joint_figures();
std::span<const FigureRow> arm_figures();
std::span<const FigureRow> stand_figures();
std::span<const FigureRow> balance_figures();
std::span<const FigureRow> budget_figures();

/// All figures of a rig. A figure whose inputs are missing, or whose value would not be finite, is
/// empty and says why.
std::vector<Figure> compute_figures(Context& context);

/// Why an axis' step never settles, as a sentence: it cannot move, it runs away, it keeps swinging,
/// it comes to rest elsewhere.
std::string why_never_settles(Context& context, Axis axis);

}  // namespace gazewright
