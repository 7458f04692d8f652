#pragma once

#include <array>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/motion/axis_model.h"
#include "core/motion/profile.h"

/// The step response of one axis: design section 5 as written (gear with gap and spring, sampled
/// control, envelope).
namespace gazewright {

/// A row per control sample, starting at t = 0. All vectors have the same length.
struct Trace {
  double sample_time_s = 0;
  std::vector<double> time_s, angle_rad, speed_radps, motor_angle_rad, current_A, bus_A;
  std::vector<double> motor_speed_radps;
};

/// Simulates a step of `move_rad` from rest for `duration_s`. Within 0.02 % of the move of a
/// tight-tolerance integration at every sample, unless the axis hunts in its gap: such a course
/// goes its own way under any other rounding. A model that runs away (unstable gains) ends early
/// at 1e6 times the move: the trace is then shorter and finite.
Trace simulate_step(const AxisModel& model, double move_rad, double duration_s,
                    const std::stop_token& stop = {});

struct StepFigures {
  std::optional<double> rise_time_s;  ///< 10-90 % of the move
  std::optional<double>
      settle_time_s;     ///< last time outside ±band; empty: never within the horizon
  double overshoot = 0;  ///< fraction of the move, 0 where there is none
  double peak_current_A = 0, peak_speed_radps = 0;
};
StepFigures step_figures(const Trace& trace, double move_rad, double band_rad);
/// A step is taken as settled where the rest of the horizon shows it: 30 % of it inside the band.
inline constexpr double kLatestSettling = 0.7;
/// When the angle enters the band for good, between the last sample outside it and the next. [s]
struct AngleAt {
  double time_s, angle_rad;
};
double settling_s(AngleAt outside, AngleAt next, double move_rad, double band_rad);

/// How long a move is simulated until it is seen to settle, one after the other. [s]
inline constexpr std::array kSettleHorizons_s{0.6, 2.0, 6.0};
/// How far a load that runs away goes before its simulation ends, of the move.
inline constexpr double kRunaway = 1e6;
double far_rad(double move_rad);
/// Rows of a trace that lasts this long.
std::size_t step_rows(double duration_s, double rate_Hz);

/// Simulates as long as it takes to see it settle. The returned trace is the longest run.
struct SettledStep {
  Trace trace;
  StepFigures figures;
};
/// @param most_s  ends too where it has been seen this long, as a later settling is of no interest
SettledStep simulate_until_settled(const AxisModel& model, double move_rad, double band_rad,
                                   const std::stop_token& stop = {}, double most_s = kInfinity);
/// The same along a planned move, with the loop's feed-forwards; the horizons are counted from its
/// end. Along a profile of kind step it is that step.
SettledStep simulate_until_settled(const AxisModel& model, const Profile& profile, double band_rad,
                                   const std::stop_token& stop = {}, double most_s = kInfinity);

}  // namespace gazewright
