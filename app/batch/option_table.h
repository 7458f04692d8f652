#pragma once

#include "app/batch/options.h"

/// The table of options, for the reader of the command line.
namespace gazewright::batch {

using Problem = std::optional<UsageProblem>;

/// One option: which verbs take it, whether a value follows, and what it does to the command.
struct OptionRow {
  std::string_view name;
  std::string_view value;  ///< what the help calls it; empty: a flag
  std::span<const Verb> verbs;
  Problem (*apply)(Command&, std::string_view);
};

/// Null where there is no such option.
const OptionRow* option_named(std::string_view name);
bool belongs_to(const OptionRow& row, Verb verb);
/// "figures takes --json, --csv, --strict"
std::string options_of(Verb verb);
std::string quoted(std::string_view text);

}  // namespace gazewright::batch
