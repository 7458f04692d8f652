#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <variant>

#include "core/files/rig_file.h"

namespace gazewright {

/// The bytes of a file, at most one more than a rig file may have, so that more is seen; else why
/// it cannot be read.
std::variant<std::string, Diagnostic> file_text(const std::filesystem::path& file);

/// What `parse` makes of the file, or only the reason why it cannot be read.
template <class Loaded>
Loaded loaded_from(const std::filesystem::path& file,
                   Loaded (*parse)(std::string_view text, const std::string& file_name)) {
  const auto read = file_text(file);
  if (const auto* text = std::get_if<std::string>(&read)) return parse(*text, file.string());
  Loaded loaded;
  loaded.diagnostics.push_back(std::get<Diagnostic>(read));
  return loaded;
}

}  // namespace gazewright
