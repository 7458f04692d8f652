#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/motion/profile.h"
#include "core/motion/step.h"

namespace gazewright {

class Context;

/// The task's move along one planned profile, simulated.
struct ProfileRun {
  ProfileKind kind = ProfileKind::step;
  std::string because;  ///< why it was not simulated; the rest is then empty
  double planned_s = 0;
  std::vector<double> time_s, planned_rad, angle_rad;  ///< per control sample
  StepFigures figures;
  std::optional<double> rms_current_A;  ///< phase amplitude, from start to settled
  std::optional<double> ringing_rad;    ///< empty without a bracket's stiffness
  std::optional<double> camera_s;       ///< until the camera is still; empty: not known, or never
  std::optional<double> usable_s;       ///< the picture, from the command on
};

struct AxisProfiles {
  std::vector<ProfileRun> runs;  ///< in the order of kProfiles; empty where they were left out
  std::optional<ProfileKind> best;
  std::string advice;  ///< which one is best, as a sentence

  const ProfileRun* run(ProfileKind kind) const;
};

/// When the camera is still, from the command on, and how it rings. Where no bracket is entered it
/// is as still as the output. @pre what the step needs is there, and the camera.
struct CameraStill {
  std::optional<double> settle_s, ringing_rad;
  std::vector<double> angle_rad;  ///< the camera's, per sample of the run; empty without a bracket
};
CameraStill camera_still(Context& context, Axis axis, const SettledStep& run, double move_rad,
                         double planned_s);

/// All profiles of an axis. @pre what the step needs is there.
AxisProfiles profiles_of(Context& context, Axis axis, const std::stop_token& stop);

}  // namespace gazewright
