#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/analysis/context.h"

namespace gazewright {

/// What a check compares: the margin is capacity/demand − 1. Either may be missing where there is
/// no such number; then `because` says why.
struct Compared {
  enum class Outcome {
    by_numbers,
    impossible,  ///< the rig cannot do it at all: fails, whatever the numbers
    doubtful,    ///< the numbers do not tell all, somebody has to look: tight where they hold
    moot,        ///< nothing of it is asked (no limit stated, no swing): holds, without numbers
    absent       ///< what it is about is not there (no cable, no stops): no finding
  };
  std::optional<double> demand, capacity;
  std::string because;
  Outcome outcome = Outcome::by_numbers;
};
Compared moot(std::string because);
Compared absent();

/// `to_zero` is for angles of either sign; the others solve values above 0 only.
enum class Way { up, down, to_zero };

/// One field that may mend a check, and which way to turn it.
struct Lever {
  std::string_view path;  ///< with <axis>
  Way way;
  double reach;  ///< how many times its value it may change, > 1
};

struct Check {
  std::string_view id;    ///< "<axis>.move.time"
  std::string_view what;  ///< "Move and settle in time"
  std::string_view goal;  ///< "would make the move in time", as a remedy ends
  std::string_view part;  ///< "<axis>.gearbox", whose card it opens
  std::string_view si_unit, unit;
  std::span<const std::string_view> inputs;
  Compared (*compare)(Context&, Axis);
  std::span<const Lever> levers;
  Compared (*trial)(Context&, Axis) =
      nullptr;  ///< a cheaper `compare` for the trials of remedies, whose margin may be too
                ///< good: what it finds is asked of `compare`
  std::string_view asked_by = {};  ///< field without which the finding is left out: a detail that
                                   ///< nobody has to enter
  bool (*asked_when)(Context&, Axis) = nullptr;  ///< else: whether it is worth a line in this rig
  std::optional<Remedy> (*offer)(Context&, Axis) =
      nullptr;  ///< a remedy that is worked out otherwise; first of those that cost alike
  void (*lend)(Context& from, Context& to, std::string_view path) =
      nullptr;  ///< hands a trial, where the field of this path has changed, those working values
                ///< of the rig that stay as they are
};

std::span<const Check> motion_checks();
std::span<const Check> coupling_checks();
std::span<const Check> loop_checks();
std::span<const Check> travel_checks();
std::span<const Check> cable_checks();
std::span<const Check> wire_checks();
std::span<const Check> cable_torque_checks();
std::span<const Check> stop_checks();
std::span<const Check> power_off_checks();
std::span<const Check> homing_checks();
std::span<const Check> encoder_checks();
std::span<const Check> gear_checks();
std::span<const Check> reach_checks();
/// Position, speed and integral gain at once; empty where none are advised.
std::optional<Remedy> advised_gains(Context& context, Axis axis);
std::span<const Check> smooth_checks();
std::span<const Check> tracking_checks();
std::span<const Check> heat_checks();
std::span<const Check> supply_checks();
std::span<const Check> bearing_checks();
std::span<const Check> joint_checks();
std::span<const Check> arm_checks();
std::span<const Check> stand_checks();
std::span<const Check> balance_checks();
std::span<const Check> budget_checks();
/// All checks that each axis has.
std::vector<const Check*> axis_checks();

/// Margin, at most 1e6; 0 where both are equal within 1e-9; empty where demand or capacity is.
std::optional<double> margin_of(const Compared& compared);
Verdict verdict_of(const Compared& compared);

/// The finding of one check, without remedies; empty where what it is about is not there.
std::optional<Finding> find(const Check& check, Context& context, Axis axis);

/// Levers solved for the value that just holds, nearest first; empty where none within reach does.
/// Every trial is a rig of its own. @param context  of the rig, as the finding was made with
std::vector<Remedy> remedies_of(const Check& check, Context& context, const Rig& rig, Axis axis);

}  // namespace gazewright
