#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/analysis/usable_travel.h"
#include "core/pointing/pointing_errors.h"
#include "core/pointing/uncertainty.h"

/// What the figures, the check and the bars of the pointing budget share.
namespace gazewright {

/// All that decides gravity and the cables' pull on an axis over the usable travel of both.
inline constexpr std::array<InputPath, 8> kPull{"<load>",
                                                "<axis>.cable.<spring>",
                                                "pan.stops.<travel>",
                                                "pan.stops.soft_inset",
                                                "pan.cable.<travel>",
                                                "tilt.stops.<travel>",
                                                "tilt.stops.soft_inset",
                                                "tilt.cable.<travel>"};
inline constexpr std::array<InputPath, 1> kGap{"<axis>.gearbox.backlash"};
inline constexpr std::array<InputPath, 3> kReading{"<axis>.encoder.bits", "<axis>.encoder.error",
                                                   "<axis>.gearbox.ratio"};
inline constexpr auto kWindup = joined(kPull, std::array<InputPath, 1>{"<axis>.gearbox.stiffness"});
/// Without these there is no budget.
inline constexpr auto kBudget = joined(joined(kGap, kReading), kWindup);
inline constexpr auto kBudgetPixels = joined(kBudget, kScale);

/// One error of an axis. Empty: left out, and why.
struct BudgetTerm {
  std::string_view id, name;
  Distribution distribution = Distribution::rectangular;
  std::optional<double> half_width_rad, deviation_rad;
  std::string because;
};
enum class BudgetId {
  backlash,
  encoder,
  windup,
  droop,
  friction,
  flex,
  bearing,
  ripple,
  mount,
  calibration,
  vision
};
inline constexpr std::size_t kBudgetTerms = 11;
struct Budget {
  std::array<BudgetTerm, kBudgetTerms> terms;
  const BudgetTerm& term(BudgetId id) const { return terms[static_cast<std::size_t>(id)]; }
};
/// With the encoder where it is, or elsewhere; the teeth loose, or pressed together all the time.
struct BudgetCase {
  bool encoder_at_output = false;
  bool teeth_held = false;
};
BudgetCase budget_case(Context& context, Axis axis);  ///< as the rig is
/// Friction that keeps the load from being pressed on its tooth: breakaway, with the cables'. [N·m]
double gap_friction_Nm(Context& context, Axis axis);
/// The rig's own, worked out once. @pre the inputs of kBudget are there
const Budget& budget(Context& context, Axis axis);
/// The same in another case.
Budget budget_of(Context& context, Axis axis, const BudgetCase& budget_case);

/// The terms' half-widths or deviations as one; what winds up, droops and bends under the same
/// weight is added before it is squared.
double rss_rad(const Budget& budget);
double worst_rad(const Budget& budget);
double deviation_rad(const Budget& budget);

/// Of gravity and cables over the usable travel of both axes; empty where that is not known.
const std::optional<PullRange>& pull_over_travel(Context& context, Axis axis);

}  // namespace gazewright
