#include "core/data/data_table.h"

#include <algorithm>
#include <cmath>

#include "core/data/data_rows.h"
#include "core/data/data_text.h"
#include "core/files/spelling.h"
#include "core/files/yaml_tree.h"
#include "core/units/units.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr std::string_view kHowTo =
    "write for example {value: 3 GPa, source: \"data sheet of the maker\"}";

std::string text_at(const YamlNode& map, std::string_view key) {
  const YamlNode* found = map.find(key);
  return found != nullptr && found->is_scalar() ? found->value : std::string();
}

template <class Rows>
auto* row_named(Rows& rows, std::string_view name) {
  const auto found =
      std::ranges::find_if(rows, [&](const DataRow& row) { return is_same_word(row.name, name); });
  return found == rows.end() ? nullptr : &*found;
}

/// Reads the values of one row and gathers what is wrong with them.
class RowReader {
 public:
  RowReader(DataRow& row, std::span<const DataColumn> columns, std::vector<Fault>& faults)
      : row_(row), columns_(columns), faults_(faults) {}

  void read(const YamlNode& map) {
    for (std::size_t i = 0; i < map.children.size(); ++i) {
      const YamlNode &key = map.keys[i], &node = map.children[i];
      if (key.value == "note" || key.value == "source") {
        if (node.is_scalar()) row_.words[key.value] = node.value;
      }
    }
    for (std::size_t i = 0; i < map.children.size(); ++i) read(map.keys[i], map.children[i]);
  }

 private:
  std::string source_of_row() const {
    const auto source = row_.words.find("source");
    return source == row_.words.end() ? std::string() : source->second;
  }

  void fault(const YamlNode& key, const std::string& what, std::string fix) {
    faults_.push_back(
        {key.at, row_.name + '.' + shortened(key.value) + ' ' + what, std::move(fix)});
  }

  std::string known_columns(std::string_view key) const {
    std::vector<std::string> known;
    std::string all;
    for (const DataColumn& column : columns_) {
      known.emplace_back(column.key);
      all += (all.empty() ? "" : ", ") + known.back();
    }
    const std::string near = nearest_word(key, known);
    return near.empty() ? words("the columns of this file are %1", all)
                        : words("did you mean %1?", near);
  }

  void read(const YamlNode& key, const YamlNode& node) {
    if (key.value == "note" || key.value == "source") return;
    const auto column = std::ranges::find(columns_, key.value, &DataColumn::key);
    if (column == columns_.end()) {
      fault(key, words("is no known column"), known_columns(key.value));
    } else if (node.is_map()) {
      const std::string source = text_at(node, "source");
      read_value(key, *column,
                 {0, 0, text_at(node, "value"), source.empty() ? source_of_row() : source},
                 text_at(node, "spread"));
    } else if (node.is_scalar()) {
      read_value(key, *column, {0, 0, node.value, source_of_row()}, {});
    } else {
      fault(key, words("is no {value, source}"), words(kHowTo));
    }
  }

  void read_value(const YamlNode& key, const DataColumn& column, DataValue value,
                  const std::string& spread) {
    FieldInfo info{};
    info.key = column.key;
    info.si_unit = column.si_unit;
    info.unit = column.unit;
    info.least = column.least;
    info.most = column.most;
    if (value.source.empty())
      return fault(key, words("has no source"), words("say where it comes from: %1", kHowTo));
    const auto read = read_quantity(value.written, info);
    if (const auto* problem = std::get_if<UnitProblem>(&read))
      return fault(key, words("cannot be read: %1", problem->problem), problem->fix);
    value.si = std::get<Quantity>(read).value();
    if (!spread.empty()) {
      const auto half = read_spread(spread, info, value.si);
      if (const auto* problem = std::get_if<UnitProblem>(&half))
        return fault(key, words("has a spread that cannot be read: %1", problem->problem),
                     problem->fix);
      value.spread_si = std::get<double>(half);
      if (!range_problem(info, value.si - value.spread_si).empty())
        return fault(key, words("has a spread that reaches beyond what is possible"),
                     words("write the half-width of the range that it is found in"));
    }
    row_.values[key.value] = std::move(value);
  }

  DataRow& row_;
  std::span<const DataColumn> columns_;
  std::vector<Fault>& faults_;
};

}  // namespace

std::string_view data_text(std::string_view name) {
  const auto texts = data_texts();
  const auto found = std::ranges::find(texts, name, &DataText::name);
  return found == texts.end() ? std::string_view() : found->yaml;
}

const DataValue* DataRow::find(std::string_view key) const {
  const auto found = values.find(key);
  return found == values.end() ? nullptr : &found->second;
}
double DataRow::si(std::string_view key) const {
  const DataValue* found = find(key);
  return found == nullptr ? std::nan("") : found->si;
}
double DataRow::least(std::string_view key) const {
  const DataValue* found = find(key);
  return found == nullptr ? std::nan("") : found->si - found->spread_si;
}
std::string DataRow::source(std::string_view key) const {
  const DataValue* found = find(key);
  return found == nullptr ? std::string() : found->source;
}
bool DataRow::is_own() const {
  return std::ranges::any_of(values, [](const auto& one) { return !one.second.own_file.empty(); });
}

const DataRow* DataTable::find(std::string_view name) const { return row_named(rows, name); }
DataRow* find_row(std::vector<DataRow>& rows, std::string_view name) {
  return row_named(rows, name);
}

std::vector<DataRow> read_rows(std::string_view yaml, std::span<const DataColumn> columns,
                               std::vector<Fault>& faults) {
  std::vector<DataRow> rows;
  const std::size_t before = faults.size();
  const auto tree = parse_yaml(yaml, faults);
  if (!tree || tree->is_null()) return rows;  // nothing but comments
  if (!tree->is_map()) {
    if (faults.size() == before)
      faults.push_back(
          {tree->at, words("the file is no map of named rows"),
           words("write for example pla: {density: {value: 1.24 g/cm3, source: scale}}")});
    return rows;
  }
  rows.reserve(tree->children.size());
  for (std::size_t i = 0; i < tree->children.size(); ++i) {
    const YamlNode &key = tree->keys[i], &node = tree->children[i];
    if (!node.is_map()) {
      faults.push_back(
          {key.at, words("%1 is no map of values", shortened(key.value)), words(kHowTo)});
      continue;
    }
    DataRow row;
    row.name = key.value;
    row.at = key.at;
    RowReader(row, columns, faults).read(node);
    rows.push_back(std::move(row));
  }
  return rows;
}

DataTable read_data(std::string_view yaml, std::span<const DataColumn> columns,
                    const std::string& file) {
  std::vector<Fault> faults;
  DataTable table;
  table.rows = read_rows(yaml, columns, faults);
  table.faults = to_diagnostics(std::move(faults), yaml, file);
  return table;
}

}  // namespace gazewright
