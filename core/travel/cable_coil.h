#pragma once

namespace gazewright {

/// A cable wound like a clock spring, one layer on the other, between a turning hub and a fixed
/// wall. Several cables lie side by side along the axis, so their number does not matter here.
struct Coil {
  double length_m, hub_radius_m, wall_radius_m;
  double thickness_m;  ///< of one layer
};

/// Why such a coil cannot be, or "". All other functions take a coil that can.
const char* coil_problem(const Coil& coil);

/// Share of the room between hub and wall that the cable fills, L·t/(π(r_w² − r_h²)); half of it
/// gives the most travel.
double coil_fill(const Coil& coil);
/// Turns when wound tight on the hub, (√(r_h² + L·t/π) − r_h)/t, and when lying against the wall,
/// (r_w − √(r_w² − L·t/π))/t. Layers are taken as concentric: off by less than (t/2πr_h)²/2 of
/// itself. Source: the cable keeps its area, L·t = π(R² − r_h²); resources/handbook/cables.md.
double coil_turns_on_hub(const Coil& coil);
double coil_turns_at_wall(const Coil& coil);
/// End to end, 2π(turns on the hub − turns at the wall). The middle is half-way between the two.
double coil_travel_rad(const Coil& coil);

}  // namespace gazewright
