#pragma once

#include "core/motion/explicit_step.h"
#include "core/motion/step_dynamics.h"

/// Carries motor and load over one control sample, with as many substeps as the rates ask for.
namespace gazewright {

/// T_e within a sample: the lag of first order in closed form.
template <class Number>
struct TorqueLag {
  Number command_Nm, gap_Nm, rate_1ps;
  Number at(double time_s) const { return command_Nm + gap_Nm * exp_of(-rate_1ps * time_s); }
};

/// What is left of the lag's gap at the stages of an explicit step, as parts of the gap at its
/// start.
template <class Number>
struct LagParts {
  Number stage[5];  ///< the last is the end of the step

  LagParts(Number rate_1ps, double step_s) {
    constexpr double kAt[5] = {1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1};
    for (int i = 0; i < 5; ++i) stage[i] = exp_of(-rate_1ps * (step_s * kAt[i]));
  }
  Number end() const { return stage[4]; }
};

/// What the steps and their tolerances follow from. Lanes where there are two axes.
template <class Number>
struct SampleScale {
  double sample_s;
  Number lag_1ps;  ///< of the current loop
  Number move_rad, ratio;
};
SampleScale<double> sample_scale(const AxisModel& model, double move_rad);

/// Explicit Runge-Kutta steps of order 5 with error control while they are few, L-stable Rosenbrock
/// steps of order 4 where rates are stiff; the cheaper of both is kept from sample to sample. An
/// explicit step that leaves the region it began in (a tooth touches, a speed passes zero ...) and
/// comes near its tolerance is cut at that instant. The work in a sample is bounded: after its most
/// steps the explicit method hands over, and after its own the stiff one goes on with a growing
/// tolerance. `Dynamics` is AxisDynamics or CoupledDynamics.
template <class Dynamics>
class SampleAdvance {
 public:
  using Number = typename Dynamics::Number;
  using Pair = MotorAndLoadOf<Number>;
  using State = AxisStateOf<Number>;

  SampleAdvance(const Dynamics& dynamics, const SampleScale<Number>& scale);

  /// One sample with the command held. The state may become non-finite where the model runs away.
  void advance(State& state, Number command_Nm);
  /// From now on samples are this long, where two drives of different rates take turns.
  void set_sample(double sample_s);
  const Dynamics& dynamics() const { return dynamics_; }

 private:
  enum Method { kExplicit, kStiff };
  struct Start {  ///< known at the start of an explicit step: the end of the last one
    Pair acceleration;
    unsigned region = 0;
    bool known = false;
  };

  double error_of(const MotionStep<Number>& step, const State& from) const;
  double cut_s(const State& from, const MotionStep<Number>& to, Pair last,
               const TorqueLag<Number>& lag, double done_s, double step_s) const;
  bool explicit_sample(State& state, const TorqueLag<Number>& lag);
  void stiff_sample(State& state, const TorqueLag<Number>& lag);
  void settle_costs(Method used, double cost);

  Dynamics dynamics_;
  double sample_s_;
  Number lag_1ps_;
  LagParts<Number> whole_;
  int most_steps_;
  Pair angle_tolerance_rad_, speed_tolerance_radps_;
  Start start_;
  double step_s_[2];           ///< proposed next step of each method
  double cost_[2] = {0, 100};  ///< evaluations a sample takes, as last seen
  Method method_ = kExplicit;
};

}  // namespace gazewright
