#pragma once

#include <limits>
#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/files/rig_file.h"

/// Data files as tables: a map of named rows, each a map of values, each with its source beside it:
///
///     pla:
///       modulus: {value: 3 GPa, spread: 0.5 GPa, source: "from memory"}
///       density: 1.24 g/cm3
///       note: any text
///       source: of the values that state none of their own
namespace gazewright {

struct DataColumn {
  std::string_view key;
  std::string_view si_unit, unit;               ///< of the value; as people write it, for messages
  double least = -kInfinity, most = kInfinity;  ///< allowed, SI, inclusive
  bool is_needed = false;                       ///< a row is of no use without it
};
struct DataValue {
  double si = 0, spread_si = 0;  ///< spread: half-width, 0 where none is stated
  std::string written, source;
  std::string own_file{};  ///< the user's file that it stands in; empty: built in
};
struct DataRow {
  std::string name;
  std::map<std::string, DataValue, std::less<>> values{};
  std::map<std::string, std::string, std::less<>> words{};  ///< "note" and "source" of the row
  std::size_t at = 0;                                       ///< byte offset in its file

  const DataValue* find(std::string_view key) const;
  double si(std::string_view key) const;     ///< NaN where there is none
  double least(std::string_view key) const;  ///< the value less its spread
  std::string source(std::string_view key) const;
  bool is_own() const;  ///< whether any value is the user's own
};
struct DataTable {
  std::vector<DataRow> rows{};       ///< in the order of the file, those of the user's own last
  std::vector<Diagnostic> faults{};  ///< what could not be read; left out above

  const DataRow* find(std::string_view name) const;  ///< capital letters do not matter
};

/// Reads a data file. A value without a source, without a unit, out of its range or of no known
/// column is a fault; the rest is read. A file without a row is an empty table.
/// @param file  its name, for the faults
DataTable read_data(std::string_view yaml, std::span<const DataColumn> columns,
                    const std::string& file = {});

}  // namespace gazewright
