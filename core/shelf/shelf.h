#pragma once

#include <filesystem>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/files/rig_file.h"
#include "core/shelf/part.h"

/// The user's parts: a folder of files, one part each (core/files/part_file.h).
namespace gazewright {

struct ShelfEntry {
  ShelfPart part;
  std::filesystem::path file;  ///< empty: built in
};
struct Shelf {
  std::filesystem::path folder;
  std::vector<ShelfEntry> entries;   ///< by kind, then name, then file
  std::vector<Diagnostic> problems;  ///< of files that were left out, or read with a warning

  std::vector<std::size_t> of(PartKind kind) const;  ///< indices of entries
};
inline constexpr std::size_t kMostShelfFiles = 2000;

/// $XDG_DATA_HOME/gazewright/shelf, or the same below ~/.local/share; empty where there is no home.
std::filesystem::path usual_shelf_folder();

/// Every .yaml file of the folder; a bad one is a problem and left out. Where there is no such
/// folder these are the built-in parts.
Shelf load_shelf(const std::filesystem::path& folder);

/// Generic parts to start with, all of them estimates.
Shelf built_in_shelf();

/// Ratios of its gearboxes, rising, each once.
std::vector<double> gearbox_ratios(const Shelf& shelf);

/// Makes the folder with the built-in parts in it. Nothing is done where it is there: what the user
/// changed or took away stays so. Empty: done.
std::optional<Diagnostic> seed_shelf(const std::filesystem::path& folder);

/// Writes the part to a new file, whatever its name; a name that the kind has already gets a
/// number.
std::variant<ShelfEntry, Diagnostic> add_to_shelf(const Shelf& shelf, ShelfPart part);
/// Changes the name in the part's file, all else stays as written. Empty: done.
std::optional<Diagnostic> rename_on_shelf(const ShelfEntry& entry, const std::string& name);
/// Takes the file away. @returns its text, for bringing it back with save_text()
std::variant<std::string, Diagnostic> remove_from_shelf(const ShelfEntry& entry);

/// What a list says of a part in two or three figures: "300 rpm/V", "160 mΩ", "96 g".
std::vector<std::string> telling_figures(const ShelfPart& part);
/// Which they are: "Speed constant (KV)", "Peak current", "Mass".
std::vector<std::string_view> telling_labels(PartKind kind);

/// A file of resources/shelf, built into the program.
struct ShelfText {
  std::string_view file_name, yaml;
};
std::span<const ShelfText> shelf_texts();

}  // namespace gazewright
