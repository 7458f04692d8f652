#pragma once

#include "core/rig/rig.h"

namespace gazewright {

inline constexpr std::size_t kMostKeepOuts = 100;  ///< that a file may hold

/// Whether a keep-out would end below where it begins; an end that is missing is no fault.
/// @param ends  from, to
inline bool is_backwards(const std::array<Quantity, 2>& ends) {
  return ends[0].has_value() && ends[1].has_value() && *ends[0].si > *ends[1].si;
}

}  // namespace gazewright
