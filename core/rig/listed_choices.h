#pragma once

#include <string_view>
#include <vector>

#include "core/data/data_files.h"
#include "core/data/data_library.h"
#include "core/rig/fields.h"

/// Choices whose options are the rows of a data file. Used by the field tables only.
namespace gazewright {

/// A part's table with the names of a data file in place of a choice's own options.
template <class Part>
struct ListedTable {
  std::vector<std::vector<std::string_view>> options;
  std::vector<ChoiceRow<Part>> choices;
  PartTable<Part> table;
};

/// Choices that data_file_of() has a file for get its rows as options, after their own ones; rows
/// without `column` are left out. @pre `base` lives as long as the program.
template <class Part>
ListedTable<Part> with_listed_choices(const PartTable<Part>& base, std::string_view column = {}) {
  ListedTable<Part> listed{{}, {base.choices.begin(), base.choices.end()}, base};
  listed.options.reserve(base.choices.size());
  for (ChoiceRow<Part>& row : listed.choices) {
    const std::string_view file = data_file_of(row.info.key);
    if (file.empty()) continue;
    auto& options = listed.options.emplace_back(row.info.options.begin(), row.info.options.end());
    for (const DataRow& of : data_table(file).rows)
      if (column.empty() || of.find(column) != nullptr) options.push_back(of.name);
    row.info.options = options;
  }
  listed.table.choices = listed.choices;
  return listed;
}

}  // namespace gazewright
