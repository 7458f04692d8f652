#pragma once

#include <string_view>

namespace gazewright {

/// The label of the quantity, choice or text at a path of a rig ("pan.stops.kind": "Kind"); empty
/// where there is none.
std::string_view find_label(std::string_view path);

}  // namespace gazewright
