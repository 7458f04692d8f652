#pragma once

#include <cstddef>

#include "core/motion/step_control.h"
#include "core/motion/step_dynamics.h"

/// What goes into the lanes of step_lanes.cpp and comes out. Its functions are compiled for every
/// machine; the lanes' own files call them and no other of ours (see lanes.h).
namespace gazewright {

/// One axis at the start of its step.
struct LaneStart {
  std::size_t index = 0;  ///< of its ratio
  AxisDynamics dynamics;
  StepControl control;
  double move_rad = 0, ratio = 0, sample_s = 0, lag_1ps = 0, far_rad = 0, band_rad = 0;
  int most_steps = 0;
};

/// What a settling time follows from: rows of samples, the first at rest.
struct LaneEnd {
  std::size_t index = 0;
  double rows = 1;                       ///< that the simulation came to
  double last_outside = 0;               ///< last row outside the band; −1 where none is
  double outside_rad = 0, next_rad = 0;  ///< the angles of that row and of the next
};

/// Gives starts and takes ends, for one thread.
class LaneWork {
 public:
  /// Null where no more are to be started; valid until the next call.
  virtual const LaneStart* next() = 0;
  virtual void take(const LaneEnd& end) = 0;
  virtual bool stops() const = 0;
  /// The course of a lane, where anybody wants to see it.
  virtual bool shows() const = 0;
  virtual void show(std::size_t index, double angle_rad) = 0;

  double rows = 0;        ///< of a whole simulation
  double latest_row = 0;  ///< outside from there on: not settled, whatever comes

 protected:
  ~LaneWork() = default;
};

void run_lanes_avx2(LaneWork& work);
void run_lanes_avx512(LaneWork& work);

}  // namespace gazewright
