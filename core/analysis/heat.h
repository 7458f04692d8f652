#pragma once

#include <optional>
#include <string>
#include <vector>

/// Temperatures of the motors over the duty.
namespace gazewright {

/// How long a motor bears a current. Empty times: without end.
struct TimeAtCurrent {
  double of_lasting = 0;  ///< multiple of the current that it bears without end
  double current_A = 0;   ///< phase amplitude
  std::optional<double> turning_s{}, warm_s{};  ///< turning, from the air's temperature and from
                                                ///< the hottest moment of the duty on
  std::optional<double> stalled_s{};            ///< standing, from the air's temperature on
};

/// From cold until steady, the duty repeated. All vectors have the same length; empty where inputs
/// are missing, and in a quick analysis.
struct HeatCurve {
  std::vector<double> time_s, winding_K, housing_K;
  std::vector<double> mount_K;                    ///< of the part that holds the motor
  double winding_limit_K = 0, mount_limit_K = 0;  ///< 0: not known
  bool runs_away = false;                         ///< there is no steady temperature
  bool has_housing = false;                       ///< else the housing is taken as the winding
  std::string duty;                               ///< "S3 28 % ...", in a sentence
  std::vector<TimeAtCurrent> times;               ///< by rising current; empty in a quick analysis
};

class Context;
enum class Axis;
HeatCurve heat_curve(Context& context, Axis axis);

}  // namespace gazewright
