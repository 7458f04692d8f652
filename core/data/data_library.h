#pragma once

#include <filesystem>

#include "core/data/data_table.h"

/// The values of the trade in force: the files of resources/data, and over them the user's own
/// files of the same form. Every table is read once, when it is first asked for; any thread may
/// ask.
namespace gazewright {

/// The table of a data file ("threads") with the user's own rows. @pre there is such a file.
const DataTable& data_table(std::string_view name);
/// The same without the user's own.
const DataTable& built_in_data(std::string_view name);

/// What stands in a folder of the user's own data files.
struct OwnData {
  struct File {
    std::string name;             ///< "threads"
    std::vector<DataRow> rows{};  ///< those that can be used
  };
  std::filesystem::path folder{};
  std::vector<File> files{};
  std::vector<Diagnostic> faults{};  ///< what cannot be used; the rest is used
};
/// $XDG_DATA_HOME/gazewright/data, or the same below ~/.local/share; empty where there is no home.
std::filesystem::path own_data_folder();
/// Reads the folder's files; a folder that is not there holds none. Throws nothing.
OwnData load_own_data(const std::filesystem::path& folder);

/// Puts the user's own rows in force, instead of those put in force before. Programs call this once
/// at their start, before anything is analysed; analyse() itself reads no file. Tables handed out
/// before stay valid.
void use_own_data(const OwnData& own);
/// Whether the row of that name has values of the user's own; false where there is no such file or
/// row.
bool is_own_row(std::string_view file, std::string_view row);
/// Changes with each use_own_data; for what is prepared from tables.
const void* data_in_force();

/// A value of the user's own.
struct OwnValue {
  std::string file, row, key, written, source;  ///< file: its name in the folder, "threads.yaml"
};
/// Those that the figures of this rig may rest on: the rows that it names, and every changed rule.
std::vector<OwnValue> own_values_of(const Rig& rig);

}  // namespace gazewright
