#pragma once

#include <string>
#include <vector>

#include "core/motion/limits_in_force.h"

/// What limits the task move of an axis, as the window, the sheet and the batch program say it.
namespace gazewright {

/// A change of one field that would shorten the step, simulated.
struct LimitGain {
  MoveLimit limit = MoveLimit::loop;
  double share = 0;    ///< of the time until settling in which it is in force now
  double saved_s = 0;  ///< of the settle time
  std::string reason;  ///< "24 % of the time the supply's current limit holds it back"
  std::string change;  ///< "supply current limit 20 A would save 11 ms"
  std::string path;    ///< of the field, and its new value
  double value_si = 0;

  std::string text() const { return reason + ": " + change; }
};

struct MoveLimits {
  std::vector<MoveLimit> step;   ///< per control sample from 0 until it settles; to the end of the
                                 ///< trace where it never does; empty where inputs are missing
  std::string sentence;          ///< shares of the step, the largest first, or why there are none
  std::string fastest;           ///< the same of the fastest move, train rigid
  std::vector<LimitGain> gains;  ///< the most saving first; empty while dragging
};

/// "the drive's current limit", as a sentence names it.
std::string_view words_of(MoveLimit limit);

}  // namespace gazewright
