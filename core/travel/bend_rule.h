#pragma once

namespace gazewright {

/// Least bend radius of a cable, in outer diameters, of a ribbon in thicknesses. Sources in
/// resources/data/cables.yaml.
struct BendRule {
  double lasting;  ///< for a bend that the cable outlives
  double still;    ///< for one that it stands still in
};
const BendRule& bend_rule(bool is_ribbon);

}  // namespace gazewright
