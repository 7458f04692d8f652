#pragma once

#include "core/data/data_table.h"
#include "core/files/fault.h"

/// Rows of a data file with their faults by place. Used by core/data only.
namespace gazewright {

std::vector<DataRow> read_rows(std::string_view yaml, std::span<const DataColumn> columns,
                               std::vector<Fault>& faults);

/// The row of that name, capital letters aside, or null.
DataRow* find_row(std::vector<DataRow>& rows, std::string_view name);

}  // namespace gazewright
