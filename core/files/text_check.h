#pragma once

#include <optional>
#include <string_view>

#include "core/files/fault.h"

namespace gazewright {

inline constexpr std::size_t kLargestFile_bytes = 1024 * 1024;
inline constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

/// What no rig file may be, seen before it is parsed: more than 1 MiB, not UTF-8, with NUL or other
/// control characters.
std::optional<Fault> check_text(std::string_view text);

}  // namespace gazewright
