#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/analysis/analysis.h"

/// Which entries a rig lacks, what waits for each of them, and which few to enter first.
namespace gazewright {

/// What a reason of say_needs() names, each once: of "needs pan.gearbox.drag, pan.stops" the two
/// paths; empty where the reason is another one.
std::vector<std::string> said_needs(std::string_view because);
/// Each once, without what is no path of an entry; the numbers of a list are one entry.
std::vector<std::string> entries_of(const std::vector<std::string>& missing);
/// The entries that such a reason names.
std::vector<std::string> needs_in(std::string_view because);

/// Figures that are unknown because this entry is missing; those that nobody asked for are left
/// out.
std::vector<const Figure*> figures_without(const Analysis& analysis, std::string_view path);

/// An entry that figures or findings wait for.
struct MissingEntry {
  std::string path;         ///< of a field, "on_tilt" for bodies, "pan.stops" for a part
  std::string part;         ///< that it belongs to: "pan.motor", "on_tilt[1]", "supply"
  std::size_t figures = 0;  ///< how many are unknown without it; those nobody asked for not counted
  std::size_t findings = 0;  ///< the same of findings

  std::size_t waiting() const { return figures + findings; }
  bool operator==(const MissingEntry&) const = default;
};

struct MissingInputs {
  std::vector<MissingEntry> all;          ///< the one that most waits for first
  std::size_t figures = 0, findings = 0;  ///< that wait for one of them
  std::vector<MissingEntry> first;        ///< the few to begin with, those of a part together
  std::size_t of_first_figures = 0;       ///< that wait for none but these
  std::size_t of_first_findings = 0;

  bool are_few() const { return first.size() == all.size(); }
};

/// Entries that `first` has at most.
inline constexpr std::size_t kMostFirstInputs = 8;

/// What the analysis waits for. The first few are put together so that as much as can be waits for
/// nothing but them: of all figures and findings the ones that need fewest entries for most
/// answers.
MissingInputs missing_inputs(const Analysis& analysis);

/// "pan motor", "the bodies on tilt": what a list for people calls MissingEntry::part; the path
/// where there are no words for it.
std::string missing_part_words(const MissingEntry& entry);
/// "Rotor inertia"; the words of the part where the entry is a whole one.
std::string missing_entry_words(const MissingEntry& entry);

}  // namespace gazewright
