#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/rig/rig.h"

namespace gazewright {

/// A fault of the user's data: where, what, how to mend it. line and column are 1-based; 0:
/// unknown.
struct Diagnostic {
  enum class Weight { error, warning };  ///< a warning leaves the rig usable (an unknown key)
  std::string file;
  int line = 0, column = 0;
  std::string problem, fix;
  Weight weight = Weight::error;
};
/// "heavy.rig.yaml:2:12: error: problem\n  fix: ..." as every list prints it.
std::string to_text(const Diagnostic& diagnostic);

inline constexpr std::size_t kMostDetectors = 5;  ///< that a file may hold
inline constexpr std::size_t kMostDutyMoves = 200, kMostMaterials = 100, kMostVariants = 24;

struct LoadedRig {
  std::optional<Rig> rig;  ///< empty where any diagnostic is an error
  std::string text;        ///< as read, for writing it back with its comments and layout
  std::vector<Diagnostic> diagnostics;
};

/// Reads version 1 of the rig file from text. Reports every problem at once and throws nothing.
/// Refused before parsing: more than 1 MiB, deeper than 32 levels, aliases and anchors, tabs of
/// nothing, invalid UTF-8, NUL bytes.
LoadedRig parse_rig(std::string_view text, const std::string& file_name);
/// The same from a file; a missing or unreadable file is a diagnostic.
LoadedRig load_rig(const std::filesystem::path& file);

/// YAML of the rig. Scalars that changed are replaced in `original_text` in place and new ones put
/// into their maps, so that comments, order, layout and all the rest stay as the user wrote them;
/// where the structure changed (or there is no original) the whole file is laid out anew, with
/// unknown keys kept. Reading the result gives a rig equal to `rig`.
std::string write_rig(const Rig& rig, std::string_view original_text = {});

/// Writes the bytes beside the file, flushes and renames, so that a fault leaves the old file as it
/// was. Empty: done; else where, problem and mend.
std::optional<Diagnostic> save_text(const std::filesystem::path& file, std::string_view bytes);

}  // namespace gazewright
