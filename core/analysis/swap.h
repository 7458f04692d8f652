#pragma once

#include "core/analysis/analysis.h"
#include "core/analysis/context.h"

namespace gazewright {

/// What exchanging the two gearboxes would do to both axes. The gains of the file suit the
/// gearboxes as they are, so both arrangements are judged with the gains that are advised for each;
/// an axis for which either has no advice keeps today's.
struct SwapStudy {
  Swap swap;                         ///< its settle times with these gains
  std::array<bool, 2> is_advised{};  ///< by Axis
  bool is_known = true;              ///< whether the inputs of all times are there
  std::vector<FieldValue> gains;     ///< that are advised for the exchanged gearboxes
  std::array<std::optional<double>, 2> settle_today_s;  ///< as the rig is, with its gains; by Axis
};
/// @param context  of the rig, not quick
SwapStudy study_swap(Context& context, const Rig& rig, const std::stop_token& stop);
/// The finding "gearboxes.swap": tight where the exchange would make the slower axis quicker, or
/// with neither arrangement both axes settle; it never fails, for it is advice. The remedy takes
/// the advised gains along; it is left out where the rig is as quick today.
Finding swap_finding(const SwapStudy& study);
/// The rig with its gearboxes exchanged.
Rig with_gearboxes_swapped(Rig rig);

}  // namespace gazewright
