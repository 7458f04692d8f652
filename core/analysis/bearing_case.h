#pragma once

#include <optional>
#include <string>

#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/loads/carried.h"
#include "core/loads/rolling.h"

/// What the figures and the checks of bearings and joints share.
namespace gazewright {

/// What holds the load: bearings of its own, or those in the gearbox. The gearbox too where kind
/// `pair` or `single` is not filled in with a rating or a spacing.
enum class Carrier { pair, single, gearbox };
Carrier carrier_of(const AxisParts& parts);

inline constexpr std::array<InputPath, 1> kCarriedInputs{"<axis>.bearing.<carried>"};
inline constexpr auto kBearingInputs =
    joined(kCarriedInputs, std::array<InputPath, 1>{"<axis>.bearing.<load>"});

/// What the axis' bearings carry; empty where the tilt's travel is not known.
struct Carried {
  std::optional<CarriedLoad> load;
  std::string because;
};
const Carried& carried_of(Context& c, Axis a);

/// The most loaded bearing of an axis that has its own.
struct BearingCase {
  RollingBearing bearing;
  double near_N = 0, far_N = 0;        ///< radial, of a pair
  double moment_Nm = 0;                ///< across a bearing that stands alone
  double axial_N = 0;                  ///< with preload and the thrust of the radial load
  std::optional<EquivalentLoad> load;  ///< empty: it cannot bear it
  std::string because;                 ///< why something is empty
};
/// @pre carrier_of() is not the gearbox and kBearingInputs are there.
const BearingCase& bearing_case(Context& c, Axis a);

/// Force on the tab while the stop bears its blow at top speed. @pre kStopBlow, radius, a stop
Answer stop_force_N(Context& c, Axis a);
/// Static equivalent load meanwhile: that force pushes the nearer bearing too. @pre those of
/// stop_force_N() and of bearing_case()
Answer static_load_at_stop_N(Context& c, Axis a);

/// Mean of the output's speed over the duty, rests counted in. @pre kCarriedInputs
Answer mean_speed_radps(Context& c, Axis a);

/// Time that 90 % of such bearings reach in this duty; infinite where it does not turn them.
/// @pre bearing_case() has what it needs, dynamic_rating
Answer bearing_life_s(Context& c, Axis a);

/// From the nearer bearing to the lens, along the axis. @pre overhang, bodies
double lens_arm_m(Context& c, Axis a);
/// Empty where the play of this kind of bearing is not entered and no preload takes it out.
std::optional<Play> bearing_play(Context& c, Axis a);

/// Radial force that would load the gearbox's output as the load does, where the data sheet has its
/// own act: of the same moment about the output's face, and not less than the force itself.
/// @pre kCarriedInputs, load_at
Answer output_load_N(Context& c, Axis a);

}  // namespace gazewright
