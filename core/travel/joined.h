#pragma once

#include <string>
#include <vector>

#include "core/rig/rig.h"

/// Bodies that touch at rest, between which no clearance is worked out.
namespace gazewright {

/// Joined bodies that go deeper into each other than this want a look. Common practice, no source.
/// [m]
inline constexpr double kHair_m = 5e-4;

/// A pair of clearance_of(rig).joined, looked at closely.
struct Joined {
  std::string tilting, other;
  double overlap_m = 0;  ///< how far the one would have to move to part them, about; 0: they touch
  bool on_axis = false;  ///< the tilt axis goes through the other one: a hub in its arm
  /// Whether they overlap and nothing says that they belong together.
  bool is_doubtful() const { return overlap_m > kHair_m && !on_axis; }
  bool operator==(const Joined&) const = default;
};
/// @pre as for clearance_of
std::vector<Joined> joined_of(const Rig& rig);

}  // namespace gazewright
