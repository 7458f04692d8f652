#pragma once

#include <optional>
#include <string>

#include "core/analysis/bearing_case.h"
#include "core/analysis/stop_case.h"
#include "core/loads/screws.h"

/// What the figures and the checks of the joint between output and load share.
namespace gazewright {

/// Largest torque that reverses in the joint: the stall torque, or what of the stop's blow passes
/// through it, wherever it sits between tab, gear and load. Empty with a reason. @pre kSprungBlow
struct JointTorque {
  std::optional<double> Nm;
  bool is_of_the_stop = false;
  std::string because;
};
JointTorque joint_torque(Context& c, Axis a);

/// The screws as entered. Empty with a reason where thread or class is not in the tables.
struct ScrewCase {
  const Thread* thread = nullptr;
  const ScrewClass* strength = nullptr;
  double friction = 0, preload_N = 0;  ///< as tightened, on the mean
  double least_N = 0, most_N = 0;      ///< by the wrench's scatter; the least also by creep
  double stress_Pa = 0;                ///< while tightening
  std::string because;
  explicit operator bool() const { return thread != nullptr && strength != nullptr; }
};
/// @pre tightening_torque
ScrewCase screw_case(Context& c, Axis a);
/// Whether the thread is in plastic, or in an insert that is.
bool is_in_plastic(const Joint& joint);
/// Tightening torque that uses 80 % of the proof stress, and no more than half of the pull-out
/// force. Empty where thread or pull-out are not known. [N·m]
std::optional<double> advised_torque_Nm(const Joint& joint);

/// Pull of weight and motion on the worst screw of a joint at the gearbox's face.
/// @pre kCarriedInputs, load_at, screws, circle_diameter
Answer screw_pull_N(Context& c, Axis a);

/// What the shaft's hold passes on. @pre shaft_diameter
Answer shaft_hold_Nm(Context& c, Axis a);
inline bool has_shaft(Context& c, Axis a) { return c.rig().axis(a).joint.shaft.value != "none"; }

inline constexpr std::array<InputPath, 3> kScrews{
    "<axis>.joint.screws", "<axis>.joint.circle_diameter", "<axis>.joint.tightening_torque"};
inline constexpr std::array<InputPath, 1> kTightened{"<axis>.joint.tightening_torque"};
inline constexpr std::array<InputPath, 1> kShaft{"<axis>.joint.shaft_diameter"};
inline constexpr auto kSlip = joined(kSprungBlow, kScrews);
inline constexpr auto kShaftSlip = joined(kSprungBlow, kShaft);
inline constexpr auto kPull =
    joined(kCarriedInputs, joined(kScrews, std::array<InputPath, 1>{"<axis>.gearbox.load_at"}));

}  // namespace gazewright
