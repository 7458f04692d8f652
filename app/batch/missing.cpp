#include "core/analysis/missing.h"

#include "app/batch/output.h"
#include "app/batch/verbs.h"

namespace gazewright::batch {
namespace {

std::string counted(std::size_t count, const char* one, const char* many) {
  return std::to_string(count) + ' ' + (count == 1 ? one : many);
}

/// "12 figures and 9 findings wait".
std::string who_waits(std::size_t figures, std::size_t findings) {
  const std::string of_figures = counted(figures, "figure", "figures");
  const std::string of_findings = counted(findings, "finding", "findings");
  return (findings == 0  ? of_figures
          : figures == 0 ? of_findings
                         : of_figures + " and " + of_findings) +
         (figures + findings == 1 ? " waits" : " wait");
}

std::string entry_object(const MissingEntry& entry) {
  return "{\"path\": " + json_string(entry.path) + ", \"part\": " + json_string(entry.part) +
         ", \"label\": " + json_string(missing_entry_words(entry)) +
         ", \"figures\": " + std::to_string(entry.figures) +
         ", \"findings\": " + std::to_string(entry.findings) + '}';
}

}  // namespace

std::string missing_table(const MissingInputs& missing) {
  if (missing.all.empty()) return {};
  std::string text = '\n' + counted(missing.all.size(), "input is", "inputs are") +
                     " missing: " + who_waits(missing.figures, missing.findings) +
                     (missing.all.size() == 1 ? " for it\n" : " for them\n");
  if (!missing.are_few())
    text += "Fill in first these " + std::to_string(missing.first.size()) + ": " +
            who_waits(missing.of_first_figures, missing.of_first_findings) +
            " for nothing else; then look again\n";
  Lines lines;
  std::string part;
  for (const MissingEntry& entry : missing.first) {
    const bool is_whole = entry.path == entry.part;
    if (entry.part != part && !is_whole) lines.push_back({missing_part_words(entry)});
    part = entry.part;
    lines.push_back({(is_whole ? "" : "  ") + entry.path, missing_entry_words(entry),
                     who_waits(entry.figures, entry.findings) + " for it"});
  }
  return text + in_columns(lines);
}

std::string missing_json(const MissingInputs& missing) {
  const auto list = [](const std::vector<MissingEntry>& entries) {
    std::string text;
    for (const MissingEntry& entry : entries)
      text += (text.empty() ? "\n      " : ",\n      ") + entry_object(entry);
    return '[' + text + (entries.empty() ? "]" : "\n    ]");
  };
  return "{\n    \"figures\": " + std::to_string(missing.figures) +
         ",\n    \"findings\": " + std::to_string(missing.findings) +
         ",\n    \"first\": " + list(missing.first) +
         ",\n    \"then\": {\"figures\": " + std::to_string(missing.of_first_figures) +
         ", \"findings\": " + std::to_string(missing.of_first_findings) +
         "},\n    \"entries\": " + list(missing.all) + "\n  }";
}

}  // namespace gazewright::batch
