#pragma once

#include <optional>

#include "core/rig/rig.h"
#include "core/travel/cable_coil.h"
#include "core/travel/cable_loop.h"

namespace gazewright {

enum class Routing { twist, coil, loop, slip_ring };
/// How the cable takes up the turning; nothing chosen is the default, twist.
Routing routing_of(const Cable& cable);

/// The cable as its routing's model takes it. @pre the routing's lengths have values.
Coil coil_of(const Cable& cable);
HangingLoop loop_of(const Cable& cable);

/// Routing `twist`: 2·rating·free length, the rating each way from the untwisted state.
double twist_travel_rad(double twist_rating_radpm, double free_length_m);

/// Why a cable whose lengths are all there allows no travel ("the coil does not fit ..."), or "".
const char* why_no_cable_travel(const Cable& cable);
/// Free lengths over which the travel only grows, or only shrinks, with the length.
struct LengthRange {
  double least_m = 0, most_m = 0;  ///< all with a travel of their own
  bool grows = true;
};
/// Those about the present free length, for the routing's other measures. A coil that fills more
/// than half of its room gets more travel by less cable; a hanging loop that reaches across gets no
/// more. Empty where the length moves nothing (a slip ring, a short loop that reaches across) or a
/// measure is missing or impossible.
std::optional<LengthRange> lengths_that_move(const Cable& cable);

/// What the cable allows end to end for its routing; +infinity: nothing limits (no cable, a slip
/// ring), empty: a length is missing, or why_no_cable_travel() says what is wrong. [rad]
std::optional<double> cable_travel_rad(const Cable& cable);

}  // namespace gazewright
