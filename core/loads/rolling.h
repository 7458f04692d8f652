#pragma once

#include <optional>

/// Rolling bearings: rating life and static safety, how a pair shares its load, and play. Sources
/// and limits: resources/handbook/loads.md.
namespace gazewright {

enum class Rolling { ball, roller };

/// One bearing as its catalogue has it.
struct RollingBearing {
  Rolling rolling = Rolling::ball;
  double dynamic_rating_N = 0, static_rating_N = 0;  ///< C, C0
  double contact_angle_rad = 0;                      ///< 0: deep groove, or cylindrical rollers
  double calculation_factor = 14;                    ///< f0, of balls up to 15 deg
};

/// e, X and Y of a single-row radial bearing.
struct AxialFactors {
  double e = 0, X = 1, Y = 0;
};
/// Of a ball bearing, linear between the rows and angles of the table and held beyond its ends.
/// @param f0Fa_per_C0  relative axial load, used up to 15 deg.
/// Source: ISO 281:2007 table 3, normal clearance; the rows with their sources are in
/// resources/data/bearings.yaml.
AxialFactors ball_factors(double contact_angle_rad, double f0Fa_per_C0);

/// Dynamic and static equivalent radial load. [N]
struct EquivalentLoad {
  double dynamic_N = 0, static_N = 0;
};
/// P = Fr where Fa/Fr <= e, else X·Fr + Y·Fa (ISO 281); P0 = max(Fr, X0·Fr + Y0·Fa) (ISO 76).
/// Rollers at an angle: e = 1.5·tan α, X = 0.4, Y = 0.4·cot α, X0 = 0.5, Y0 = 0.22·cot α (ISO 281
/// and ISO 76, from memory). Empty: cylindrical rollers (no angle) that would have to bear an axial
/// load. @pre radial, axial >= 0; the dynamic rating is not used.
std::optional<EquivalentLoad> equivalent_load(const RollingBearing& bearing, double radial_N,
                                              double axial_N);
/// Of a crossed-roller ring that bears a moment M on its pitch circle d: F = Fr + 2M/d;
/// P = F + 0.45·Fa up to Fa = 1.5·F, else 0.67·(F + Fa); P0 = F + 0.44·Fa. Source: practice of
/// public catalogues. A ring of balls takes F as its radial load.
std::optional<EquivalentLoad> equivalent_load_alone(const RollingBearing& bearing, double radial_N,
                                                    double axial_N, double moment_Nm,
                                                    double pitch_diameter_m);

/// Turns that 90 % of such bearings reach: 10⁶·(C/P)^p, p = 3 for balls, 10/3 for rollers (ISO
/// 281); infinite without a load.
double rating_life_turns(Rolling rolling, double dynamic_rating_N, double equivalent_N);

/// Axial thrust that a radial load calls forth in a bearing with a contact angle, half of its
/// rolling elements loaded: 1.216·Fr·tan α for balls, 1.260·Fr·tan α for rollers. Source: load
/// distribution of Sjövall as public catalogues print it. [N]
double thrust_of_radial_N(const RollingBearing& bearing, double radial_N);

/// Static safety C0/P0 that is asked for where a load may come as a shock: 1.5 for balls, 3 for
/// rollers, resources/data/bearings.yaml.
double wanted_static_safety(Rolling rolling);

/// How two bearings share a radial force and a moment that lies anyhow across the axis. The force
/// acts `overhang` outside the near bearing, negative where it acts between both. Magnitudes, the
/// worst way round: near = F·|1 + a/b| + M/b, far = F·|a/b| + M/b. Source: statics. [N]
/// @pre spacing > 0
struct PairLoad {
  double near_N = 0, far_N = 0;
};
PairLoad pair_load(double radial_N, double moment_Nm, double spacing_m, double overhang_m);

/// How far a shaft may tip between the ends of the play [rad], and how far a point `arm` outside
/// the near bearing moves across the axis by it, from side to side [m].
struct Play {
  double tip_rad = 0, across_m = 0;
};
/// Both bearings have the radial play: tip = 2·play/spacing, across = play·max(1, |1 +
/// 2·arm/spacing|).
Play pair_play(double radial_play_m, double spacing_m, double arm_m);
/// One bearing tips by its axial play on its pitch circle: tip = 2·play/diameter,
/// across = radial play + tip·|arm|.
Play single_play(double radial_play_m, double axial_play_m, double pitch_diameter_m, double arm_m);

}  // namespace gazewright
