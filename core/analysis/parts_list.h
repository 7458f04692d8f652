#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/rig/rig.h"

namespace gazewright {

/// A line of the list of parts: what to have on the table before building.
struct PartLine {
  std::string_view what{};     ///< plain English: "Motor"
  std::string name{};          ///< what the user calls it; may be empty
  std::optional<Axis> axis{};  ///< empty: of the rig
  double quantity = 1;
  std::string key{};  ///< "300 rpm/V, 160 mΩ, 24 A peak"; what is not entered is left out
  std::optional<double> mass_kg{};  ///< of one
  std::string no_mass{};            ///< why there is none where one is due: "needs pan.motor.mass"
  bool is_carried = false;          ///< a body that stands for a motor or gearbox listed above
};

/// Motors, drives, gearboxes, encoders, bearings, screws, cables of each axis, then camera, supply
/// and bodies, in the order of the drive line. What the rig does without is left out.
std::vector<PartLine> parts_list(const Rig& rig);

}  // namespace gazewright
