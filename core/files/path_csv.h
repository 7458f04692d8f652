#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/files/rig_file.h"
#include "core/rig/rig.h"

namespace gazewright {

inline constexpr std::size_t kMostPathPoints = 1000;  ///< that a file may hold, of either kind

/// A target's path from CSV: a line for each point with time in seconds, pan and tilt in degrees,
/// with commas between them; a first line without numbers is a header. Lines that are empty are
/// left out.
/// @param text  at most kLargestFile_bytes; a caller need not read more than one byte beyond
/// @param name  of the file, for the message
/// @returns two points or more in the order of their times, at most kMostPathPoints; else what is
/// wrong, with line and mend.
std::variant<std::vector<PathPoint>, Diagnostic> read_path_csv(std::string_view text,
                                                               const std::string& name);

/// The rig with that path, which its target follows.
Rig with_path(Rig rig, std::vector<PathPoint> path);

}  // namespace gazewright
