#pragma once

#include <array>

#include "core/motion/explicit_step.h"
#include "core/motion/step_dynamics.h"

/// Carries motor and load over one control sample, with as many substeps as the rates ask for.
namespace gazewright {

/// T_e within a sample: the lag of first order in closed form.
struct TorqueLag {
  double command_Nm, gap_Nm, rate_1ps;
  double at(double time_s) const { return command_Nm + gap_Nm * std::exp(-rate_1ps * time_s); }
};

/// What is left of the lag's gap at the stages of an explicit step, as parts of the gap at its
/// start.
struct LagParts {
  std::array<double, 5> stage;  ///< the last is the end of the step
  LagParts(double rate_1ps, double step_s);
};

/// Explicit Runge-Kutta steps of order 5 with error control while they are few, L-stable Rosenbrock
/// steps of order 4 where rates are stiff; the cheaper of both is kept from sample to sample. An
/// explicit step that leaves the region it began in (a tooth touches, a speed passes zero ...) and
/// comes near its tolerance is cut at that instant. The work in a sample is bounded: after its most
/// steps the explicit method hands over, and after its own the stiff one goes on with a growing
/// tolerance.
class SampleAdvance {
 public:
  SampleAdvance(const AxisModel& model, double move_rad);

  /// One sample with the command held. The state may become non-finite where the model runs away.
  void advance(AxisState& state, double command_Nm);
  const AxisDynamics& dynamics() const { return dynamics_; }

 private:
  enum Method { kExplicit, kStiff };
  struct Start {  ///< known at the start of an explicit step: the end of the last one
    MotorAndLoad acceleration;
    unsigned region = 0;
    bool known = false;
  };

  double error_of(const MotionStep& step, const AxisState& from) const;
  double cut_s(const AxisState& from, const MotionStep& to, MotorAndLoad last, const TorqueLag& lag,
               double done_s, double step_s) const;
  bool explicit_sample(AxisState& state, const TorqueLag& lag);
  void stiff_sample(AxisState& state, const TorqueLag& lag);
  void settle_costs(Method used, double cost);

  AxisDynamics dynamics_;
  double sample_s_, lag_1ps_;
  LagParts whole_;
  int most_steps_;
  MotorAndLoad angle_tolerance_rad_, speed_tolerance_radps_;
  Start start_;
  double step_s_[2];           ///< proposed next step of each method
  double cost_[2] = {0, 100};  ///< evaluations a sample takes, as last seen
  Method method_ = kExplicit;
};

}  // namespace gazewright
