#pragma once

#include "core/motion/step.h"

namespace gazewright {

/// A planned move of one axis from rest for `duration_s`, the target held from its end on; along a
/// profile of kind step as simulate_step(). One that runs away ends early, as there.
Trace simulate_planned(const AxisModel& model, const Profile& profile, double duration_s);

}  // namespace gazewright
