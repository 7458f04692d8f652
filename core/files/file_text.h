#pragma once

#include <filesystem>
#include <string>
#include <variant>

#include "core/files/rig_file.h"

namespace gazewright {

/// The bytes of a file, at most one more than a rig file may have, so that more is seen; else why
/// it cannot be read.
std::variant<std::string, Diagnostic> file_text(const std::filesystem::path& file);

}  // namespace gazewright
