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

  Answer(double v) : value(v) {}  // NOLINT(google-explicit-constructor)
  Answer(std::optional<double> v, std::string why)
      : value(v), because(v ? std::string() : std::move(why)) {}
  static Answer none(std::string why) { return {std::nullopt, std::move(why)}; }
};

/// One row of the figure table. `axes` says for which axes `<axis>` stands.
enum class Axes { both, pan_only, tilt_only, rig };
struct FigureRow {
  FigureInfo info;
  Axes axes;
  Answer (*compute)(Context&, Axis);
};
/// Rows by subject, in the order of design section 6.
std::span<const FigureRow> mass_figures();
std::span<const FigureRow> drive_figures();
std::span<const FigureRow> motion_figures();
std::span<const FigureRow> travel_figures();
std::span<const FigureRow> cable_figures();
std::span<const FigureRow> stop_figures();
std::span<const FigureRow> homing_figures();
std::span<const FigureRow> picture_figures();

/// All figures of a rig. A figure whose inputs are missing, or whose value would not be finite, is
/// empty and says why.
std::vector<Figure> compute_figures(Context& context);

/// Why an axis' step never settles, as a sentence: it cannot move, it runs away, it keeps swinging,
/// it comes to rest elsewhere.
std::string why_never_settles(Context& context, Axis axis);

}  // namespace gazewright
