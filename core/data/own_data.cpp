#include <algorithm>

#include "core/data/data_files.h"
#include "core/data/data_library.h"
#include "core/data/data_rows.h"
#include "core/files/file_text.h"
#include "core/files/spelling.h"
#include "core/files/text_check.h"
#include "core/files/user_folder.h"
#include "core/words/words.h"

/// The user's own data files, as far as they can be used.
namespace gazewright {
namespace {

namespace fs = std::filesystem;

/// The row with what the built-in one of its name says beside it.
DataRow completed(const DataFile& file, const DataRow& row) {
  const DataRow* known = built_in_data(file.name).find(row.name);
  DataRow whole = known == nullptr ? DataRow{row.name} : *known;
  for (const auto& [key, value] : row.values) whole.values.insert_or_assign(key, value);
  return whole;
}

std::string names_of(const DataTable& table) {
  std::string names;
  for (const DataRow& row : table.rows) names += (names.empty() ? "" : ", ") + row.name;
  return names;
}

/// Why a row cannot be used, and how to mend it; empty where it can.
std::optional<Fault> fault_of(const DataFile& file, const DataRow& row) {
  const DataTable& built_in = built_in_data(file.name);
  const DataRow* known = built_in.find(row.name);
  if (known == nullptr && !file.takes_rows)
    return Fault{row.at, words("%1 is no row that the program uses", row.name),
                 words("the rows of this file are %1", names_of(built_in))};
  const DataRow whole = completed(file, row);
  for (const DataColumn& column : file.columns) {
    if (known != nullptr && row.find(column.key) != nullptr && known->find(column.key) == nullptr &&
        !file.takes_rows)
      return Fault{row.at, words("%1 has no use for %2", row.name, column.key),
                   words("leave it out")};
    if (column.is_needed && whole.find(column.key) == nullptr)
      return Fault{row.at, words("%1 has no %2 that can be used", row.name, column.key),
                   words("add for example %1: {value: 1 %2, source: \"data sheet\"}", column.key,
                         column.unit)};
  }
  if (file.problem != nullptr)
    if (const std::string problem = file.problem(whole); !problem.empty())
      return Fault{row.at, row.name + ": " + problem, words("check its values and their units")};
  return std::nullopt;
}

void read_file(const DataFile& file, const fs::path& path, OwnData& own) {
  const auto bytes = file_text(path);
  if (const auto* fault = std::get_if<Diagnostic>(&bytes)) {
    own.faults.push_back(*fault);
    return;
  }
  std::string_view text = std::get<std::string>(bytes);
  if (text.starts_with(kByteOrderMark)) text.remove_prefix(kByteOrderMark.size());
  std::vector<Fault> faults;
  OwnData::File read{std::string(file.name)};
  for (DataRow& row : read_rows(text, file.columns, faults)) {
    if (row.values.empty()) continue;  // said already, or nothing in it
    if (auto fault = fault_of(file, row)) {
      faults.push_back(std::move(*fault));
      continue;
    }
    for (auto& [key, value] : row.values) value.own_file = path.filename().string();
    read.rows.push_back(std::move(row));
  }
  std::ranges::copy(to_diagnostics(std::move(faults), text, path.string()),
                    std::back_inserter(own.faults));
  if (!read.rows.empty()) own.files.push_back(std::move(read));
}

/// A yaml file that no table is read from: its name is mistyped.
void check_name(const fs::path& path, OwnData& own) {
  if (path.extension() != ".yaml" && path.extension() != ".yml") return;
  std::vector<std::string> known;
  std::string all;
  for (const DataFile& file : data_files()) {
    known.push_back(std::string(file.name) + ".yaml");
    all += (all.empty() ? "" : ", ") + known.back();
  }
  const std::string name = path.filename().string();
  if (std::ranges::find(known, name) != known.end()) return;
  const std::string near = nearest_word(name, known);
  own.faults.push_back(
      {path.string(), 0, 0, words("no data file has this name; it is not read"),
       near.empty() ? words("the names are %1", all) : words("did you mean %1?", near),
       Diagnostic::Weight::warning});
}

}  // namespace

fs::path own_data_folder() { return user_folder("data"); }

OwnData load_own_data(const fs::path& folder) {
  OwnData own;
  own.folder = folder;
  std::error_code error;
  if (!fs::exists(folder, error)) return own;
  std::vector<fs::path> found;
  for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error))
    found.push_back(at->path());
  if (error)
    own.faults.push_back({folder.string(),
                          0,
                          0,
                          words("this folder of data files cannot be read"),
                          words("check that it is a folder and its rights"),
                          {}});
  std::ranges::sort(found);
  for (const fs::path& path : found) {
    check_name(path, own);
    for (const DataFile& file : data_files())
      if (path.filename() == std::string(file.name) + ".yaml") read_file(file, path, own);
  }
  return own;
}

}  // namespace gazewright
