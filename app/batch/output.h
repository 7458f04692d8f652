#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/files/rig_file.h"

/// Text out of the program: numbers that mean the same in every locale, and writes that are
/// checked.
namespace gazewright::batch {

/// Exit statuses, fixed.
inline constexpr int kDone = 0, kFails = 1, kUsage = 2, kBadRig = 3, kNotWritten = 4;

/// Shortest text that reads back as the same double; a decimal point in every locale.
std::string number(double value);
/// The same, or nothing where there is no value.
std::string cell(const std::optional<double>& value);
/// Numbers as a line of CSV.
std::string csv_line(const std::vector<double>& values);
/// 3 significant digits with a decimal point and a true minus sign, "−0.0123", for tables.
std::string rounded(double value);

/// A value in the unit it is shown in: "118", "g·cm²".
struct Shown {
  std::string value, unit;
};
Shown shown(double value_si, std::string_view si_unit, std::string_view unit);
std::string with_unit(const Shown& value);  ///< "118 g·cm²", "12°"

/// A CSV field: quoted where commas, quotes or line ends ask for it (RFC 4180).
std::string csv_field(std::string_view text);
/// A JSON string with its quotes (RFC 8259): control characters escaped, UTF-8 kept, bytes that
/// are not UTF-8 replaced by U+FFFD.
std::string json_string(std::string_view text);
/// The same, or null where there is nothing.
std::string json_or_null(const std::string& text);
std::string json_or_null(const std::optional<double>& value);
/// The text on one line and without control characters, for a terminal.
std::string one_line(std::string_view text);
/// Columns that a UTF-8 text takes, one per code point.
std::size_t width(std::string_view text);
/// The text filled up with blanks to `columns`, at its right or its left.
std::string padded(std::string_view text, std::size_t columns);
std::string padded_left(std::string_view text, std::size_t columns);
/// Lines of cells as columns two blanks apart, each line two blanks in; the last cell as it is.
using Lines = std::vector<std::vector<std::string>>;
std::string in_columns(const Lines& lines);

/// Writes to standard output and flushes. A closed pipe or a full disk is a sentence on standard
/// error and kNotWritten; `status` otherwise.
int write_out(std::string_view text, int status = kDone);
/// Writes to the file, or to standard output where its name is empty.
int write_text(const std::string& file, std::string_view text);
/// "gazewright-batch: problem" and "  fix: ..." on standard error; returns `status`.
int complain(std::string_view problem, std::string_view fix, int status);
/// The rig lacks what `what` needs: "the rig cannot give a track: it needs camera.columns", then
/// the place and mend of each entry. @param file  as named by the user
int complain_of_missing(std::string_view what, std::string_view because, const LoadedRig& loaded,
                        const std::string& file);
/// Each with its place and mend on standard error.
void tell(const std::vector<Diagnostic>& diagnostics);

}  // namespace gazewright::batch
