#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/data/data_table.h"

/// The data files that there are, each with its columns.
namespace gazewright {

struct DataFile {
  std::string_view name;  ///< "threads" of threads.yaml
  std::span<const DataColumn> columns;
  bool takes_rows;  ///< whether the user may add rows; else only change the values of those there
  /// What is wrong with a whole row ("its pitch is too coarse for its diameter"), or empty; null:
  /// nothing can be.
  std::string (*problem)(const DataRow& row);
};
std::span<const DataFile> data_files();
const DataFile* find_data_file(std::string_view name);

/// The file whose rows a field of the rig names: "threads" for the key "thread"; empty: none.
std::string_view data_file_of(std::string_view field_key);

}  // namespace gazewright
