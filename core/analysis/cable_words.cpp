#include "core/analysis/cable_words.h"

#include "core/travel/cable_twist.h"

namespace gazewright {
namespace {

TightestBend helix_bend(Context& c, Axis a, const Cable& cable) {
  const auto twist = twist_each_way_rad(c, a);
  if (!twist) return {std::nullopt, kOffUsable};
  const double lay_m = cable.lay_radius_m.value(), length_m = cable.free_length_m.value();
  if (!helix_shortening_m(lay_m, *twist, length_m)) return {std::nullopt, kWoundFlat};
  if (lay_m <= 0) return {kInfinity, "a cable on the axis twists and does not bend"};
  return {helix_bend_radius_m(lay_m, *twist, length_m),
          "the helix of the outermost cable at the end of the travel"};
}

}  // namespace

std::optional<double> twist_each_way_rad(Context& c, Axis a) {
  const auto& usable = c.travel(a).usable_rad;
  return usable ? std::optional(*usable / 2) : std::nullopt;
}

TightestBend tightest_bend_of(Context& c, Axis a) {
  const Cable& cable = c.rig().axis(a).cable;
  switch (routing_of(cable)) {
    case Routing::twist:
      return helix_bend(c, a, cable);
    case Routing::coil:
      return {cable.hub_radius_m.value(), "wound tight on the hub"};
    case Routing::loop:
      return {loop_gap_m(loop_of(cable)) / 2, "half the way between the clamps where they pass"};
    case Routing::slip_ring:
      return {kInfinity, "a slip ring bends no cable"};
  }
  return {std::nullopt, ""};
}

}  // namespace gazewright
