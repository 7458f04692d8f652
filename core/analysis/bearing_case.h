#pragma once

#include <optional>
#include <string>

#include "core/analysis/context.h"
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

/// Static equivalent load while the stop bears its blow at top speed: the force on the tab pushes
/// the nearer bearing too. Empty with a reason; @pre kStopBlow and a stop are there. [N]
struct AtStop {
  std::optional<double> force_N, static_N;
  std::string because;
};
AtStop bearing_at_stop(Context& c, Axis a);

/// Mean of the output's speed over the duty, rests counted in; empty with a reason. @pre
/// kCarriedInputs
struct MeanSpeed {
  std::optional<double> radps;
  std::string because;
};
MeanSpeed mean_speed(Context& c, Axis a);

/// Time that 90 % of such bearings reach in this duty; infinite where it does not turn them. Empty
/// with a reason. @pre bearing_case() has what it needs, dynamic_rating
struct BearingLife {
  std::optional<double> seconds;
  std::string because;
};
BearingLife bearing_life(Context& c, Axis a);

/// From the nearer bearing to the lens, along the axis. @pre overhang, bodies
double lens_arm_m(Context& c, Axis a);
/// Empty where the play of this kind of bearing is not entered and no preload takes it out.
std::optional<Play> bearing_play(Context& c, Axis a);

/// Radial force that would load the gearbox's output as the load does, where the data sheet has its
/// own act: of the same moment about the output's face, and not less than the force itself. Empty
/// with a reason. @pre kCarriedInputs, load_at
struct OutputLoad {
  std::optional<double> radial_N;
  std::string because;
};
OutputLoad output_load(Context& c, Axis a);

}  // namespace gazewright
