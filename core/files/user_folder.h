#pragma once

#include <filesystem>
#include <string_view>

namespace gazewright {

/// A folder of the user's own files: $XDG_DATA_HOME/gazewright/<name>, or the same below
/// ~/.local/share; empty where there is no home. Source: XDG Base Directory Specification, by which
/// a relative path is ignored.
std::filesystem::path user_folder(std::string_view name);

}  // namespace gazewright
