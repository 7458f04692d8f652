#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/files/rig_file.h"

namespace gazewright {

/// Where in the text of a rig each of these missing entries ("pan.drive.current_limit", "on_tilt",
/// "pan.stops") is to be written, and how: the place of the entry where it stands empty, else of
/// the part that it goes into, in the order of the text. What is no path is left out.
/// @pre the text was read without an error
std::vector<Diagnostic> places_of_missing(std::string_view text, const std::string& file,
                                          std::span<const std::string> paths);

}  // namespace gazewright
