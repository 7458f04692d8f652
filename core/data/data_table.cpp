#include "core/data/data_table.h"

#include <algorithm>
#include <cmath>

#include "core/data/data_text.h"
#include "core/files/yaml_tree.h"
#include "core/units/units.h"

namespace gazewright {
namespace {

std::string text_at(const YamlNode& map, std::string_view key) {
  const YamlNode* found = map.find(key);
  return found != nullptr && found->is_scalar() ? found->value : std::string();
}

/// Reads the values of one row and gathers what is wrong with them.
class RowReader {
 public:
  RowReader(DataRow& row, std::vector<std::string>& faults) : row_(row), faults_(faults) {}

  void read(const std::string& key, const YamlNode& node, std::span<const DataColumn> columns) {
    const auto column = std::ranges::find(columns, key, &DataColumn::key);
    if (node.is_scalar() && column == columns.end()) {
      row_.words[key] = node.value;
    } else if (column == columns.end()) {
      fault(key, "is no known column");
    } else if (!node.is_map()) {
      fault(key, "is no {value, source}");
    } else {
      read_value(key, node, *column);
    }
  }

 private:
  void fault(const std::string& key, const std::string& what) {
    faults_.push_back(row_.name + '.' + key + ' ' + what);
  }

  void read_value(const std::string& key, const YamlNode& node, const DataColumn& column) {
    FieldInfo info{};
    info.key = column.key;
    info.si_unit = column.si_unit;
    info.unit = column.unit;
    DataValue value{0, 0, text_at(node, "value"), text_at(node, "source")};
    if (value.source.empty()) return fault(key, "has no source");
    const auto read = read_quantity(value.written, info);
    if (const auto* problem = std::get_if<UnitProblem>(&read))
      return fault(key, "cannot be read: " + problem->problem);
    value.si = std::get<Quantity>(read).value();
    if (const std::string spread = text_at(node, "spread"); !spread.empty()) {
      const auto half = read_spread(spread, info, value.si);
      if (const auto* problem = std::get_if<UnitProblem>(&half))
        return fault(key, "has a spread that cannot be read: " + problem->problem);
      value.spread_si = std::get<double>(half);
    }
    row_.values[key] = std::move(value);
  }

  DataRow& row_;
  std::vector<std::string>& faults_;
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

const DataRow* DataTable::find(std::string_view name) const {
  const auto found = std::ranges::find(rows, name, &DataRow::name);
  return found == rows.end() ? nullptr : &*found;
}

DataTable read_data(std::string_view yaml, std::span<const DataColumn> columns) {
  DataTable table;
  std::vector<Fault> faults;
  const auto tree = parse_yaml(yaml, faults);
  for (const Fault& fault : faults) table.faults.push_back(fault.problem);
  if (!tree || !tree->is_map()) {
    table.faults.emplace_back("the file is no map of named rows");
    return table;
  }
  for (std::size_t i = 0; i < tree->children.size(); ++i) {
    const YamlNode& node = tree->children[i];
    DataRow row;
    row.name = tree->keys[i].value;
    RowReader reader(row, table.faults);
    if (!node.is_map()) {
      table.faults.push_back(row.name + " is no map");
      continue;
    }
    for (std::size_t k = 0; k < node.children.size(); ++k)
      reader.read(node.keys[k].value, node.children[k], columns);
    table.rows.push_back(std::move(row));
  }
  return table;
}

}  // namespace gazewright
