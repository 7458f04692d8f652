#pragma once

#include <QString>
#include <string>

#include "core/rig/rig.h"

namespace gazewright {

/// Why the field at `path` cannot have the value that it has in `rig` ("It ends at ..., below where
/// it begins, ..."), or empty where it can or is no keep-out's.
QString keep_out_problem(const Rig& rig, const std::string& path);

}  // namespace gazewright
