#include "core/files/fault.h"

#include <algorithm>

#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr std::size_t kMostShown = 100;

bool is_inside_letter(char c) { return (static_cast<unsigned char>(c) & 0xC0) == 0x80; }

Diagnostic to_diagnostic(const Fault& fault, std::string_view text, const std::string& file) {
  const std::string_view before = text.substr(0, std::min(fault.at, text.size()));
  const auto newline = before.rfind('\n');
  const std::string_view in_line =
      newline == std::string_view::npos ? before : before.substr(newline + 1);
  Diagnostic diagnostic;
  diagnostic.file = file;
  diagnostic.line = static_cast<int>(std::count(before.begin(), before.end(), '\n')) + 1;
  diagnostic.column =
      static_cast<int>(in_line.size()) -
      static_cast<int>(std::count_if(in_line.begin(), in_line.end(), is_inside_letter)) + 1;
  diagnostic.problem = fault.problem;
  diagnostic.fix = fault.fix;
  diagnostic.weight = fault.weight;
  return diagnostic;
}

}  // namespace

std::vector<Diagnostic> to_diagnostics(std::vector<Fault> faults, std::string_view text,
                                       const std::string& file) {
  std::stable_sort(faults.begin(), faults.end(),
                   [](const Fault& a, const Fault& b) { return a.at < b.at; });
  const std::size_t shown = std::min(faults.size(), kMostShown);
  std::vector<Diagnostic> diagnostics;
  diagnostics.reserve(shown + 1);
  for (std::size_t i = 0; i < shown; ++i)
    diagnostics.push_back(to_diagnostic(faults[i], text, file));
  if (shown == faults.size()) return diagnostics;
  const bool has_error =
      std::any_of(faults.begin() + static_cast<std::ptrdiff_t>(shown), faults.end(),
                  [](const Fault& f) { return f.weight == Diagnostic::Weight::error; });
  Diagnostic rest;
  rest.file = file;
  rest.problem = words("there are %1 more problems", std::to_string(faults.size() - shown));
  rest.fix = words("mend these first");
  rest.weight = has_error ? Diagnostic::Weight::error : Diagnostic::Weight::warning;
  diagnostics.push_back(rest);
  return diagnostics;
}

std::string shortened(std::string_view text) {
  constexpr std::size_t kLongest = 40;
  std::size_t cut = std::min(text.size(), kLongest);
  while (cut < text.size() && cut > 0 && is_inside_letter(text[cut])) --cut;
  std::string shown(text.substr(0, cut));
  for (char& c : shown)
    if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) c = ' ';
  return cut < text.size() ? shown + "..." : shown;
}

std::string to_text(const Diagnostic& diagnostic) {
  std::string text = diagnostic.file;
  if (diagnostic.line > 0)
    text += ":" + std::to_string(diagnostic.line) + ":" + std::to_string(diagnostic.column);
  text +=
      diagnostic.weight == Diagnostic::Weight::error ? words(": error: ") : words(": warning: ");
  text += diagnostic.problem;
  if (!diagnostic.fix.empty()) text += words("\n  fix: %1", diagnostic.fix);
  return text;
}

}  // namespace gazewright
