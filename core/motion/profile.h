#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/motion/axis_model.h"

/// Planned moves from rest to rest: where the output should be at each instant.
namespace gazewright {

enum class ProfileKind { step, trapezoid, jerk_limited, minimum_jerk, minimum_time };
inline constexpr std::array<ProfileKind, 5> kProfiles{
    ProfileKind::step, ProfileKind::trapezoid, ProfileKind::jerk_limited, ProfileKind::minimum_jerk,
    ProfileKind::minimum_time};
std::string_view name_of(ProfileKind kind);  ///< "jerk_limited", as in the ids of figures
std::string_view word_of(ProfileKind kind);  ///< "jerk-limited", as in a sentence

struct ProfilePoint {
  double angle_rad = 0, speed_radps = 0, acceleration_radps2 = 0;
};

/// What a planned move keeps to, at the output.
struct ProfileLimits {
  double speed_radps = kInfinity, acceleration_radps2 = kInfinity, jerk_radps3 = kInfinity;
};
/// Loop and top speed; acceleration and jerk as entered, else 80 % of the peak acceleration, and
/// the jerk that reaches it in a quarter of the time of speeding up. The acceleration is not above
/// zero where the axis cannot move.
ProfileLimits profile_limits(const AxisModel& model, double move_rad);

/// A polynomial of degree 5 in the time since `start_s`.
struct ProfilePiece {
  double start_s = 0;
  std::array<double, 6> coefficient{};  ///< rad, rad/s, rad/s² ...
};
struct Profile {
  ProfileKind kind = ProfileKind::step;
  double move_rad = 0, time_s = 0;  ///< time 0: a step
  std::vector<ProfilePiece> pieces;

  /// Before the start at rest at 0, from `time_s` on at rest at the target.
  ProfilePoint at(double time_s) const;
};

/// A move that keeps to the limits with any sign of `move_rad`. @pre acceleration and jerk above 0;
/// kind is not minimum_time.
/// Sources: trapezoid Siciliano et al., Robotics, Springer 2009, 4.2.1; jerk-limited (seven pieces)
/// Biagiotti & Melchiorri, Trajectory Planning, Springer 2008, 3.4 (from memory); minimum jerk
/// Flash & Hogan, J. Neurosci. 5 (1985) 1688 (from memory).
Profile plan_move(ProfileKind kind, double move_rad, const ProfileLimits& limits);
/// The quickest move inside the envelope, see rigid_move.h; empty where the axis cannot make it.
std::optional<Profile> plan_quickest(const AxisModel& model, double move_rad);

/// Any kind for an axis; empty where the axis cannot make the move.
std::optional<Profile> plan(ProfileKind kind, const AxisModel& model, double move_rad);

}  // namespace gazewright
