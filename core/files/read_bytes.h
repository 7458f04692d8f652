#pragma once

#include <filesystem>
#include <string>
#include <variant>

#include "core/files/system_words.h"

namespace gazewright {

/// The bytes of a text file, one more than is allowed at most, so that more is seen; or why there
/// are none.
std::variant<std::string, SystemWords> read_bytes(const std::filesystem::path& file);

}  // namespace gazewright
