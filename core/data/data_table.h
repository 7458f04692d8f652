#pragma once

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Data files as tables: a map of named rows, each a map of values, each with its source beside it:
///
///     pla:
///       modulus: {value: 3 GPa, spread: 0.5 GPa, source: "from memory"}
///       note: any text
namespace gazewright {

struct DataColumn {
  std::string_view key;
  std::string_view si_unit, unit;  ///< of the value; as people write it, for messages
};
struct DataValue {
  double si = 0, spread_si = 0;  ///< spread: half-width, 0 where none is stated
  std::string written, source;
};
struct DataRow {
  std::string name;
  std::map<std::string, DataValue, std::less<>> values;
  std::map<std::string, std::string, std::less<>> words;  ///< texts beside the values

  const DataValue* find(std::string_view key) const;
  double si(std::string_view key) const;     ///< NaN where there is none
  double least(std::string_view key) const;  ///< the value less its spread
};
struct DataTable {
  std::vector<DataRow> rows;        ///< in the order of the file
  std::vector<std::string> faults;  ///< what could not be read, one sentence each; left out above

  const DataRow* find(std::string_view name) const;
};

/// Reads a data file. A value without a source, without a unit, or of no known column is a fault.
DataTable read_data(std::string_view yaml, std::span<const DataColumn> columns);

}  // namespace gazewright
