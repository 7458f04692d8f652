#pragma once

#include <array>
#include <span>
#include <string>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/loads/arm.h"

/// What the figures and the checks of the printed arm share.
namespace gazewright {

inline constexpr std::array<InputPath, 3> kArmSize{"arm.length", "arm.width", "arm.height"};
inline constexpr auto kArmCarries = joined(kArmSize, std::array<InputPath, 1>{"<load>"});

struct ArmCase {
  ArmBeam beam;
  MassProperties load;  ///< seen from the end of this support
  ArmDroop droop;
  ArmModes modes;
  double inertia_kgm2 = 0;  ///< of the arms, about the pan axis
};
struct ArmValues {
  std::string because;  ///< why all is empty: "needs arm.material"
  ArmCase side, fork;
  bool is_fork = false;          ///< which of them the rig has
  double strength_Pa = 0;        ///< to count on, of the material as its layers lie; NaN: not known
  std::string strength_because;  ///< why it is not known

  const ArmCase& used() const { return is_fork ? fork : side; }
};
/// @pre kArmSize has values.
const ArmValues& arm_values(Context& context);

/// Largest stress where the arm is held: weight and the largest accelerations of both axes at once.
/// @pre kRigidTrain of both axes has values. [Pa]
double arm_stress_Pa(Context& context, const ArmCase& arm);

/// What a list of inputs lacks of both axes together, as a reason, each name once; empty where it
/// is all there.
std::string needs_of_both(Context& context, std::span<const InputPath> inputs);

}  // namespace gazewright
