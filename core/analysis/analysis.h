#pragma once

#include <array>
#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

#include "core/analysis/balance.h"
#include "core/analysis/bus.h"
#include "core/analysis/coupling.h"
#include "core/analysis/eye_benchmark.h"
#include "core/analysis/gain_advice.h"
#include "core/analysis/heat.h"
#include "core/analysis/move_limits.h"
#include "core/analysis/pointing.h"
#include "core/analysis/profiles.h"
#include "core/analysis/tracking.h"
#include "core/motion/loop.h"
#include "core/motion/rigid_move.h"
#include "core/motion/step.h"
#include "core/rig/rig.h"
#include "core/travel/soft_limits.h"
#include "core/travel/travel.h"

/// Everything Gazewright says about a rig. Window, sheet and batch show an Analysis and compute
/// nothing.
namespace gazewright {

/// What one figure is: the same for every rig. `<axis>` in id, inputs and formula stands for pan or
/// tilt.
struct FigureInfo {
  std::string_view id;       ///< "<axis>.move.shortest_time"
  std::string_view label;    ///< "Shortest time of the move"
  std::string_view si_unit;  ///< of Figure::value; "1" for plain numbers
  std::string_view unit;     ///< shown in, e.g. "ms"
  std::string_view formula;  ///< one line
  std::string_view source;   ///< where the formula comes from and how far it can be trusted
  std::span<const std::string_view>
      inputs;  ///< paths of the fields it needs; a missing one makes it unknown
};

struct Figure {
  std::string id;
  const FigureInfo* info = nullptr;
  std::optional<double>
      value;  ///< SI; always finite; empty: unknown, or an answer that does not exist
  std::string
      because;  ///< why it is empty: "needs pan.motor.rotor_inertia" or "never settles: ..."
  bool is_aside = false;  ///< empty, and nobody asked: about details that are not entered, or about
                          ///< another kind of part; lists for people leave it out
};

enum class Verdict { holds, tight, fails, unknown };
const char* name_of(Verdict verdict);

/// A change that would make a finding hold: one field's new value (pressing it applies it), or only
/// a sentence.
struct Remedy {
  std::string text;  ///< "pan ratio 14 or less would make the move in time"
  std::string
      path;  ///< field to change; empty: nothing to apply; "swap" exchanges the two gearboxes
  double value_si = 0;
  std::vector<FieldValue> also{};  ///< fields that change together with it
  std::string price{};  ///< what would then fail that does not now, which the text says too

  bool is_free() const { return price.empty(); }
  bool operator==(const Remedy&) const = default;
};

struct Finding {
  std::string id;            ///< "pan.move.time"
  std::optional<Axis> axis;  ///< empty: both
  std::string what;          ///< "Move and settle in time"
  Verdict verdict = Verdict::unknown;
  std::optional<double> demand, capacity;  ///< SI
  std::optional<double> margin;    ///< capacity/demand − 1; holds from 15 % on, tight from 0 on
  std::string_view si_unit, unit;  ///< of demand and capacity; shown in
  std::string because;             ///< the reason in a sentence
  std::string part;                ///< the part whose card it belongs to, e.g. "pan.gearbox"
  std::vector<Remedy> remedies;

  bool operator==(const Finding&) const = default;
};

/// Torque against speed at the output: both ends of the envelope through the gear, and what the
/// moves use.
struct EnvelopeCurve {
  std::vector<double> speed_radps, driving_Nm, braking_Nm;  ///< driving ≥ 0; braking as a magnitude
};
struct AxisCurves {
  Trace step;                                 ///< empty where the axis model lacks inputs
  std::vector<double> step_output_torque_Nm;  ///< what the motor gives at the output in the step,
                                              ///< signed, per sample: N·Kt·i
  std::vector<double> camera_rad;  ///< the camera's angle on its bracket in the step, per sample;
                                   ///< empty without a bracket, or where the step never settles
  EnvelopeCurve envelope;          ///< the winding at 20 °C, as all figures have it
  EnvelopeCurve hot_envelope;  ///< the winding at its limit; empty where that is not known, and if
                               ///< quick
  double winding_limit_K = 0;  ///< of hot_envelope
  double lasting_torque_Nm = 0;  ///< at the output, turning, that the winding bears without end; 0:
                                 ///< none, or not known
  MovePath fastest;              ///< empty where there is none
  double move_rad = 0, band_rad = 0;
  Travel travel;
  SpeedOverTravel speed_over_travel;  ///< empty where inputs, stops or soft limits are missing
};

/// What exchanging the two gearboxes would do.
struct Swap {
  struct PerAxis {
    std::optional<double> settle_now_s, settle_swapped_s, shortest_now_s, shortest_swapped_s;
  };
  std::array<PerAxis, 2> axis;  ///< by Axis
  std::string text;             ///< one sentence
};

struct Analysis {
  std::vector<Figure> figures;    ///< in the order of the table
  std::vector<Finding> findings;  ///< sorted: fails, tight, unknown, holds; by margin within
  std::array<AxisCurves, 2> curves;
  std::array<AxisProfiles, 2> profiles;  ///< by Axis
  Swap swap;
  Coupling coupling;  ///< of both axes at once; empty where inputs are missing, and if quick
  std::array<MoveLimits, 2> limits;           ///< by Axis
  std::array<FrequencyResponse, 2> response;  ///< by Axis; empty where inputs are missing
  std::array<GainAdvice, 2> advice;           ///< by Axis
  TrackingRuns tracking;
  std::array<HeatCurve, 2> heat;                   ///< by Axis
  BusCurve bus;                                    ///< of both axes
  std::array<GravityOverTravel, 2> gravity;        ///< by Axis
  std::array<PointingBudget, 2> pointing;          ///< by Axis
  EyeBenchmark eye;                                ///< left out with the remedies
  std::array<std::vector<std::string>, 2> homing;  ///< the homing plan by Axis, a sentence a step
  bool is_quick = false;                           ///< see AnalyseOptions

  const MoveLimits& limits_of(Axis axis) const { return limits[static_cast<std::size_t>(axis)]; }
  const AxisCurves& of(Axis axis) const { return curves[static_cast<std::size_t>(axis)]; }
  const Figure* figure(std::string_view id) const;         ///< null where there is no such figure
  std::optional<double> value(std::string_view id) const;  ///< empty where unknown
};

/// Whether the move is over when the camera stands still, not the axis: where the axis settles and
/// the camera is on a bracket that gives way.
bool ends_at_camera(const Analysis& analysis, Axis axis);
/// Figure of the time until then: "pan.picture.settle_time", else "pan.step.settle_time".
std::string settle_id(const Analysis& analysis, Axis axis);

struct AnalyseOptions {
  /// Remedies, swap, what easing a limit gains and the eye's benchmark: simulate many rigs or
  /// moves.
  bool remedies = true;
  /// As on every frame of a drag: without these, without planned moves, both axes at once, gain
  /// advice, the gain of feeding the target's speed forward and the share of the sphere it sees.
  bool quick = false;
};
/// The one flow: pure, no I/O, thread-safe. A stop request ends it early with what there is.
Analysis analyse(const Rig& rig, const AnalyseOptions& options = {},
                 const std::stop_token& stop = {});

/// The table of all figures, in the order of design section 6.
std::span<const FigureInfo> figure_table();

}  // namespace gazewright
