#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/files/rig_file.h"

/// Faults while a file is read, by their place in its bytes. Used by core/files only.
namespace gazewright {

struct Fault {
  std::size_t at = 0;  ///< byte offset in the text
  std::string problem, fix;
  Diagnostic::Weight weight = Diagnostic::Weight::error;
};

/// In the order of the text, with line and column (in characters, from 1). Long lists end after 100
/// with a last one that says how many more there are.
std::vector<Diagnostic> to_diagnostics(std::vector<Fault> faults, std::string_view text,
                                       const std::string& file);

/// A text of the user for a message, at most 40 characters of one line.
std::string shortened(std::string_view text);

}  // namespace gazewright
