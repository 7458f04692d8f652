#pragma once

#include "core/analysis/analysis.h"
#include "core/analysis/context.h"

namespace gazewright {

/// What exchanging the two gearboxes would do to both axes, and whether that would be better.
Swap swap_of(Context& context, const Rig& rig, const std::stop_token& stop);
/// The finding "gearboxes.swap": tight where the exchange would make the slower axis quicker; it
/// never fails, for it is advice.
Finding swap_finding(const Swap& swap);
/// The rig with its gearboxes exchanged.
Rig with_gearboxes_swapped(Rig rig);

}  // namespace gazewright
