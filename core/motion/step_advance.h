#pragma once

#include "core/motion/step_parts.h"

/// Carries motor and load over one control sample, with as many substeps as the rates ask for.
namespace gazewright {

/// The most explicit steps in a sample.
inline int most_explicit_steps(double sample_s) {
  return static_cast<int>(std::clamp(3e6 * sample_s, 200.0, 4000.0));
}

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
/// tolerance. `Dynamics` is AxisDynamics or CoupledDynamics; one axis alone goes along power series
/// (core/motion/series_step.h) instead of the explicit steps.
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

  bool explicit_sample(State& state, const TorqueLag<Number>& lag);
  void stiff_sample(State& state, const TorqueLag<Number>& lag);
  void settle_costs(Method used, double cost);

  Dynamics dynamics_;
  double sample_s_;
  Number lag_1ps_;
  LagParts<Number> whole_;
  int most_steps_;
  StepTolerance<Number> tolerance_;
  Start start_;
  double step_s_[2];           ///< proposed next step of each method
  double cost_[2] = {0, 100};  ///< evaluations a sample takes, as last seen
  Method method_ = kExplicit;
};

template <>
bool SampleAdvance<AxisDynamics>::explicit_sample(State& state, const TorqueLag<double>& lag);

}  // namespace gazewright
