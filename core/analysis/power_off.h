#pragma once

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"

/// What the figures and the checks of an axis without power share.
namespace gazewright {

inline constexpr std::array<InputPath, 8> kFreeTrain{"<load>",
                                                     "<axis>.friction.coulomb",
                                                     "<axis>.friction.viscous",
                                                     "<axis>.gearbox.efficiency",
                                                     "<axis>.gearbox.back_efficiency",
                                                     "<axis>.gearbox.drag",
                                                     "<axis>.gearbox.viscous",
                                                     "<axis>.cable.<spring>"};
inline constexpr auto kCoast = joined(joined(kFreeTrain, kRotors), kTopSpeed);
inline constexpr auto kCoastIntoStop = joined(kCoast, kSoft);
inline constexpr auto kCoastIntoStopLimited =
    joined(kCoastIntoStop, std::array<InputPath, 1>{"<axis>.loop.speed_limit"});
inline constexpr std::array<InputPath, 6> kHolds{"<load>",
                                                 "<axis>.friction.coulomb",
                                                 "<axis>.gearbox.ratio",
                                                 "<axis>.gearbox.drag",
                                                 "<axis>.gearbox.back_efficiency",
                                                 "<axis>.cable.<spring>"};

/// Whether there are stops and soft limits to coast into.
inline bool has_stops_to_meet(const Travel& travel) {
  return travel.stops_rad && travel.soft_rad && std::isfinite(*travel.stops_rad);
}

}  // namespace gazewright
