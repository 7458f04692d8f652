#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/files/rig_file.h"
#include "core/shelf/part.h"

/// Files of the parts shelf, version 1: one part a file, with the keys, units and sources of the
/// rig file.
///
///     shelf: 1
///     name: generic 42 mm outrunner, 300 rpm/V
///     note: any text
///     motor: {speed_constant: {value: 300 rpm/V, source: estimate}, ...}
namespace gazewright {

struct LoadedPart {
  std::optional<ShelfPart> part;  ///< empty where any diagnostic is an error
  std::vector<Diagnostic> diagnostics;
};

/// Reports every problem at once and throws nothing; refuses what parse_rig() refuses. A part
/// without a name is called as its file.
LoadedPart parse_part(std::string_view text, const std::string& file_name);
/// The same from a file.
LoadedPart load_part(const std::filesystem::path& file);

/// The file's text. Reading it gives the part again.
std::string write_part(const ShelfPart& part);
/// The text of a part's file with another name, all else as it was written.
/// @param part  what the text was read as
std::string with_part_name(std::string_view text, const ShelfPart& part, const std::string& name);

}  // namespace gazewright
