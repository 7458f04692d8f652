#pragma once

#include <string>
#include <vector>

/// What makes an axis point amiss, and how much.
namespace gazewright {

struct PointingTerm {
  std::string id, name;       ///< "backlash", "Backlash"
  double half_width_rad = 0;  ///< largest, each way
  double deviation_rad = 0;   ///< standard deviation of its distribution
  std::string distribution;   ///< "rectangular"
};
/// The largest deviation first; terms whose inputs are missing are left out and named.
struct PointingBudget {
  std::vector<PointingTerm> terms;
  std::vector<std::string> missing;   ///< a sentence each
  double rss_rad = 0, worst_rad = 0;  ///< of the terms that are there
};

class Context;
enum class Axis;
PointingBudget pointing_budget(Context& context, Axis axis);

}  // namespace gazewright
