#include "core/analysis/missing.h"

#include <algorithm>
#include <functional>
#include <map>

#include "core/analysis/context.h"
#include "core/analysis/explain.h"
#include "core/analysis/input_names.h"
#include "core/rig/field_labels.h"
#include "core/rig/fields.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

bool is_word_at(std::string_view text, std::size_t at, std::size_t length) {
  const auto ends = [](char c) { return c == ' ' || c == ',' || c == ';' || c == ':'; };
  const std::size_t end = at + length;
  return (at == 0 || ends(text[at - 1])) &&
         (end == text.size() || ends(text[end]) || text[end] == '[');
}

/// "pan.motor" of "pan.motor.mass", "on_tilt[1]" of "on_tilt[1].shape.box[0]", "task" of
/// "task.duty.moves_per_minute"; a whole part, and the place of an axis, is its own.
std::string part_of(const std::string& path) {
  std::size_t from = 0;
  for (const Axis axis : kAxes) {
    const std::string prefix = std::string(name_of(axis)) + '.';
    if (path.starts_with(prefix)) from = prefix.size();
  }
  return path.substr(0, path.find('.', from));
}

/// Figures and findings that wait for the same entries.
struct Waiting {
  std::vector<std::size_t> entries;  ///< indices into MissingInputs::all, rising
  std::size_t figures = 0, findings = 0;

  std::size_t count() const { return figures + findings; }
};

bool is_detail(const std::string& path) {
  const FieldInfo* info = find_info(path);
  return info != nullptr && info->detail && !info->fallback && info->fallback_text.empty();
}

/// Whether a figure is about a detail that nobody entered, or that would come with a part that is
/// not there: with all else entered nobody would ask for it.
bool is_of_detail(const Figure& figure) {
  const std::vector<std::string> needs = needs_in(figure.because);
  if (figure.info == nullptr || needs.empty()) return false;
  const Axis axis = axis_of_id(figure.id).value_or(Axis::pan);
  return std::ranges::any_of(figure.info->inputs, [&](std::string_view input) {
    const std::string path = for_axis(input, axis);
    return is_detail(path) && std::ranges::any_of(needs, [&](const std::string& need) {
             return need == path || path.starts_with(need + '.');
           });
  });
}

/// What waits, by the paths that it waits for.
class WaitingList {
 public:
  explicit WaitingList(const Analysis& analysis) {
    for (const Figure& figure : analysis.figures)
      if (!figure.value && !figure.is_aside && !is_of_detail(figure))
        add(figure.because, &Waiting::figures);
    for (const Finding& finding : analysis.findings)
      if (finding.verdict == Verdict::unknown) add(finding.because, &Waiting::findings);
  }

  /// Every entry, in the order in which it was first named.
  const std::vector<MissingEntry>& entries() const { return entries_; }

  /// By the order that `all` has.
  std::vector<Waiting> by_order_of(const std::vector<MissingEntry>& all) const {
    std::vector<Waiting> groups;
    for (const auto& [paths, counted] : groups_) {
      Waiting group = counted;
      for (const std::string& path : paths)
        group.entries.push_back(static_cast<std::size_t>(
            std::ranges::find(all, path, &MissingEntry::path) - all.begin()));
      std::ranges::sort(group.entries);
      groups.push_back(std::move(group));
    }
    return groups;
  }

 private:
  void add(std::string_view because, std::size_t Waiting::*kind) {
    std::vector<std::string> paths = needs_in(because);
    if (paths.empty()) return;
    for (const std::string& path : paths) {
      auto at = std::ranges::find(entries_, path, &MissingEntry::path);
      if (at == entries_.end()) at = entries_.insert(at, {path, part_of(path)});
      ++(kind == &Waiting::figures ? at->figures : at->findings);
    }
    std::ranges::sort(paths);
    ++(groups_[std::move(paths)].*kind);
  }

  std::vector<MissingEntry> entries_;
  std::map<std::vector<std::string>, Waiting> groups_;
};

/// Chooses the entries to begin with: again and again those that the answers need which come at the
/// fewest entries each, as long as there is room.
class FirstFew {
 public:
  FirstFew(std::vector<Waiting> groups, std::size_t entries)
      : groups_(std::move(groups)), is_chosen_(entries, false) {}

  /// By MissingInputs::all.
  const std::vector<bool>& choose(std::size_t room) {
    for (const Waiting* best = best_within(room); best != nullptr; best = best_within(room)) {
      room -= best->entries.size();
      choose_all(std::vector<std::size_t>(best->entries));
    }
    // Where each answer needs more than there is room for, those that most waits for.
    const bool is_none = std::ranges::find(is_chosen_, true) == is_chosen_.end();
    for (std::size_t i = 0; is_none && i < std::min(room, is_chosen_.size()); ++i) choose_all({i});
    return is_chosen_;
  }

  /// With what they still wait for.
  const std::vector<Waiting>& groups() const { return groups_; }

 private:
  void choose_all(const std::vector<std::size_t>& entries) {
    for (const std::size_t entry : entries) is_chosen_[entry] = true;
    for (Waiting& group : groups_)
      std::erase_if(group.entries, [&](std::size_t entry) { return is_chosen_[entry]; });
  }

  /// How many answers come for these entries.
  std::size_t gain_of(const std::vector<std::size_t>& entries) const {
    std::size_t gain = 0;
    for (const Waiting& group : groups_) {
      const bool is_open = !group.entries.empty() && group.entries.size() <= entries.size();
      if (is_open && std::ranges::includes(entries, group.entries)) gain += group.count();
    }
    return gain;
  }

  const Waiting* best_within(std::size_t room) const {
    const Waiting* best = nullptr;
    double best_gain = 0;
    for (const Waiting& group : groups_) {
      if (group.entries.empty() || group.entries.size() > room) continue;
      const double gain =
          static_cast<double>(gain_of(group.entries)) / static_cast<double>(group.entries.size());
      if (gain > best_gain) best = &group, best_gain = gain;
    }
    return best;
  }

  std::vector<Waiting> groups_;
  std::vector<bool> is_chosen_;
};

/// Those of a part together, where the first of them stands.
std::vector<MissingEntry> by_part(const std::vector<MissingEntry>& entries) {
  std::vector<MissingEntry> sorted;
  for (const MissingEntry& entry : entries) {
    const auto same = std::find_if(sorted.rbegin(), sorted.rend(), [&](const MissingEntry& other) {
      return other.part == entry.part;
    });
    sorted.insert(same.base() == sorted.begin() ? sorted.end() : same.base(), entry);
  }
  return sorted;
}

}  // namespace

std::vector<std::string> said_needs(std::string_view because) {
  const std::string needs = words("needs %1", "");
  if (!because.starts_with(needs)) return {};
  because.remove_prefix(needs.size());
  constexpr std::string_view kComma = ", ";
  std::vector<std::string> named;
  while (!because.empty()) {
    const std::string_view one = because.substr(0, because.find(kComma));
    if (std::ranges::find(named, one) == named.end()) named.emplace_back(one);
    because.remove_prefix(std::min(because.size(), one.size() + kComma.size()));
  }
  return named;
}

std::vector<std::string> entries_of(const std::vector<std::string>& missing) {
  std::vector<std::string> paths;
  for (std::string path : missing) {
    if (path.find(' ') != std::string::npos) continue;
    if (path.ends_with(']') && path.find('.') != std::string::npos) path.erase(path.rfind('['));
    if (std::ranges::find(paths, path) == paths.end()) paths.push_back(std::move(path));
  }
  return paths;
}

std::vector<std::string> needs_in(std::string_view because) {
  return entries_of(said_needs(because));
}

std::vector<const Figure*> figures_without(const Analysis& analysis, std::string_view path) {
  std::vector<const Figure*> waiting;
  for (const Figure& figure : analysis.figures) {
    if (figure.value || figure.is_aside || figure.info == nullptr) continue;
    const std::string_view because = figure.because;
    for (auto at = because.find(path); at != std::string_view::npos;
         at = because.find(path, at + 1)) {
      if (!is_word_at(because, at, path.size())) continue;
      waiting.push_back(&figure);
      break;
    }
  }
  return waiting;
}

MissingInputs missing_inputs(const Analysis& analysis) {
  const WaitingList list(analysis);
  MissingInputs missing;
  missing.all = list.entries();
  std::ranges::stable_sort(missing.all, std::ranges::greater(), &MissingEntry::waiting);
  FirstFew few(list.by_order_of(missing.all), missing.all.size());
  const std::vector<bool>& is_first = few.choose(kMostFirstInputs);
  for (std::size_t i = 0; i < missing.all.size(); ++i)
    if (is_first[i]) missing.first.push_back(missing.all[i]);
  missing.first = by_part(missing.first);
  for (const Waiting& group : few.groups()) {
    missing.figures += group.figures;
    missing.findings += group.findings;
    if (!group.entries.empty()) continue;
    missing.of_first_figures += group.figures;
    missing.of_first_findings += group.findings;
  }
  return missing;
}

std::string missing_part_words(const MissingEntry& entry) {
  const std::string said = path_words(entry.part);
  if (!said.empty()) return said;
  const std::string parts = part_words(entry.part);
  return parts.empty() ? entry.part : parts;
}

std::string missing_entry_words(const MissingEntry& entry) {
  if (entry.path == entry.part) return missing_part_words(entry);
  std::string_view label = find_label(entry.path);
  if (label.empty()) label = find_label(entry.path + "[0]");
  return label.empty() ? missing_part_words(entry) : words(label);
}

}  // namespace gazewright
