#include "core/data/data_library.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <cassert>
#include <forward_list>
#include <mutex>

#include "core/data/data_files.h"
#include "core/data/data_rows.h"
#include "core/data/data_text.h"
#include "core/rig/fields.h"

namespace gazewright {
namespace {

/// Tables of the files that the user has rows in.
struct Library {
  std::map<std::string, DataTable, std::less<>> tables;
};

struct Libraries {
  std::mutex mutex;
  std::forward_list<Library> kept;
};
Libraries& libraries() {
  static Libraries all;
  return all;
}
std::atomic<const Library*>& in_force() {
  static std::atomic<const Library*> library = nullptr;
  return library;
}

DataTable with_rows(DataTable table, const std::vector<DataRow>& own) {
  for (const DataRow& row : own) {
    DataRow* known = find_row(table.rows, row.name);
    if (known == nullptr) {
      table.rows.push_back(row);
    } else {
      for (const auto& [key, value] : row.values) known->values.insert_or_assign(key, value);
    }
  }
  return table;
}

void add_own(std::vector<OwnValue>& values, const DataRow& row) {
  for (const auto& [key, value] : row.values)
    if (!value.own_file.empty())
      values.push_back({value.own_file, row.name, key, value.written, value.source});
}

/// The row that a field of the rig names, where it is one of the data files'.
const DataRow* named_row(const Rig& rig, std::string_view key, std::string_view name) {
  const std::string_view file = data_file_of(key);
  if (file.empty() || name.empty()) return nullptr;
  const DataRow* row = data_table(file).find(name);
  if (row == nullptr || file != "materials") return row;
  const bool is_rigs_own = std::ranges::any_of(
      rig.materials, [&](const Material& own) { return data_table(file).find(own.name) == row; });
  return is_rigs_own ? nullptr : row;
}

const DataRow* named_row(const Rig& rig, const FieldRef& field) {
  if (const auto* choice = std::get_if<ChoiceRef>(&field))
    return named_row(rig, choice->info->key, choice->choice->value);
  if (const auto* text = std::get_if<TextRef>(&field))
    return named_row(rig, text->info->key, *text->text);
  return nullptr;
}

}  // namespace

const DataTable& built_in_data(std::string_view name) {
  struct Slot {
    std::once_flag once;
    DataTable table;
  };
  static std::array<Slot, 32> slots;
  const DataFile* file = find_data_file(name);
  assert(file != nullptr && data_files().size() <= slots.size());
  Slot& slot = slots[static_cast<std::size_t>(file - data_files().data())];
  std::call_once(slot.once, [&] {
    slot.table = read_data(data_text(name), file->columns, std::string(name) + ".yaml");
  });
  return slot.table;
}

const DataTable& data_table(std::string_view name) {
  if (const Library* library = in_force().load(std::memory_order_acquire)) {
    const auto own = library->tables.find(name);
    if (own != library->tables.end()) return own->second;
  }
  return built_in_data(name);
}

bool is_own_row(std::string_view file, std::string_view row) {
  const Library* library = in_force().load(std::memory_order_acquire);
  if (library == nullptr) return false;
  const auto table = library->tables.find(file);
  const DataRow* found = table == library->tables.end() ? nullptr : table->second.find(row);
  return found != nullptr && found->is_own();
}

const void* data_in_force() { return in_force().load(std::memory_order_acquire); }

void use_own_data(const OwnData& own) {
  Library library;
  for (const OwnData::File& file : own.files)
    if (!file.rows.empty())
      library.tables.emplace(file.name, with_rows(built_in_data(file.name), file.rows));
  Libraries& all = libraries();
  const std::lock_guard lock(all.mutex);
  all.kept.push_front(std::move(library));
  in_force().store(&all.kept.front(), std::memory_order_release);
}

std::vector<OwnValue> own_values_of(const Rig& rig) {
  std::vector<OwnValue> values;
  const auto* library = in_force().load(std::memory_order_acquire);
  if (library == nullptr || library->tables.empty()) return values;
  std::vector<const DataRow*> rows;
  for (const DataFile& file : data_files())
    if (!file.takes_rows)
      for (const DataRow& row : data_table(file.name).rows) rows.push_back(&row);
  Rig filled = with_defaults(rig);
  for (const FieldRef& field : all_fields(filled))
    if (const DataRow* row = named_row(rig, field))
      if (std::ranges::find(rows, row) == rows.end()) rows.push_back(row);
  for (const DataRow* row : rows) add_own(values, *row);
  return values;
}

}  // namespace gazewright
