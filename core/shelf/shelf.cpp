#include "core/shelf/shelf.h"

#include <algorithm>
#include <tuple>

#include "core/files/file_text.h"
#include "core/files/part_file.h"
#include "core/files/spelling.h"
#include "core/files/system_words.h"
#include "core/files/user_folder.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

namespace fs = std::filesystem;

void sort_entries(std::vector<ShelfEntry>& entries) {
  std::ranges::sort(entries, {}, [](const ShelfEntry& entry) {
    return std::tuple(entry.part.kind(), entry.part.name, entry.file.string());
  });
}

void take(Shelf& shelf, LoadedPart loaded, const fs::path& file) {
  if (loaded.part) shelf.entries.push_back({std::move(*loaded.part), file});
  std::ranges::move(loaded.diagnostics, std::back_inserter(shelf.problems));
}

Diagnostic refused(const fs::path& file, const SystemWords& words) {
  return {file.string(), 0, 0, words.problem, words.fix, Diagnostic::Weight::error};
}

std::vector<fs::path> yaml_files(const fs::path& folder, std::error_code& fault) {
  std::vector<fs::path> files;
  for (fs::directory_iterator at(folder, fault), end; !fault && at != end; at.increment(fault))
    if (at->path().extension() == ".yaml") files.push_back(at->path());
  std::ranges::sort(files);
  return files;
}

/// "generic 42 mm outrunner, 300 rpm/V" as a file name: "generic-42-mm-outrunner-300-rpm-v".
std::string file_name_of(std::string_view name) {
  constexpr std::size_t kLongest = 60;
  std::string text;
  for (const char c : in_small_letters(name.substr(0, kLongest))) {
    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'))
      text += c;
    else if (!text.empty() && text.back() != '-')
      text += '-';
  }
  while (text.ends_with('-')) text.pop_back();
  return text.empty() ? "part" : text;
}

/// A file that nobody has.
fs::path free_file(const fs::path& folder, const ShelfPart& part) {
  const std::string base = std::string(name_of(part.kind())) + "-" + file_name_of(part.name);
  fs::path file = folder / (base + ".yaml");
  for (int number = 2; fs::exists(file); ++number)
    file = folder / (base + "-" + std::to_string(number) + ".yaml");
  return file;
}

bool has_name(const Shelf& shelf, PartKind kind, const std::string& name) {
  return std::ranges::any_of(shelf.entries, [&](const ShelfEntry& entry) {
    return entry.part.kind() == kind && entry.part.name == name;
  });
}

std::optional<Diagnostic> make_folder(const fs::path& folder) {
  if (folder.empty())
    return Diagnostic{"", 0, 0, words("there is no home folder for the parts shelf"),
                      words("set XDG_DATA_HOME to a folder of yours")};
  std::error_code fault;
  fs::create_directories(folder, fault);
  if (fault) return refused(folder, words_for_writing(fault.value()));
  return std::nullopt;
}

}  // namespace

std::vector<std::size_t> Shelf::of(PartKind kind) const {
  std::vector<std::size_t> indices;
  for (std::size_t i = 0; i < entries.size(); ++i)
    if (entries[i].part.kind() == kind) indices.push_back(i);
  return indices;
}

std::vector<double> gearbox_ratios(const Shelf& shelf) {
  std::vector<double> ratios;
  for (const std::size_t i : shelf.of(PartKind::gearbox)) {
    if (const auto ratio = std::get<Gearbox>(shelf.entries[i].part.fields).ratio.si)
      ratios.push_back(*ratio);
  }
  std::ranges::sort(ratios);
  ratios.erase(std::unique(ratios.begin(), ratios.end()), ratios.end());
  return ratios;
}

fs::path usual_shelf_folder() { return user_folder("shelf"); }

Shelf built_in_shelf() {
  Shelf shelf;
  for (const ShelfText& text : shelf_texts())
    take(shelf, parse_part(text.yaml, std::string(text.file_name)), {});
  sort_entries(shelf.entries);
  return shelf;
}

Shelf load_shelf(const fs::path& folder) {
  std::error_code ignored;
  if (folder.empty() || !fs::exists(folder, ignored)) {
    Shelf built_in = built_in_shelf();
    built_in.folder = folder;
    return built_in;
  }
  Shelf shelf;
  shelf.folder = folder;
  std::error_code fault;
  std::vector<fs::path> files = yaml_files(folder, fault);
  if (fault) shelf.problems.push_back(refused(folder, words_for_reading(fault.value())));
  if (files.size() > kMostShelfFiles) {
    shelf.problems.push_back({folder.string(), 0, 0,
                              words("the shelf holds %1 files; %2 are read",
                                    std::to_string(files.size()), std::to_string(kMostShelfFiles)),
                              words("take some of them away")});
    files.resize(kMostShelfFiles);
  }
  for (const fs::path& file : files) take(shelf, load_part(file), file);
  sort_entries(shelf.entries);
  return shelf;
}

std::optional<Diagnostic> seed_shelf(const fs::path& folder) {
  std::error_code ignored;
  if (!folder.empty() && fs::exists(folder, ignored)) return std::nullopt;
  if (auto fault = make_folder(folder)) return fault;
  for (const ShelfText& text : shelf_texts())
    if (auto fault = save_text(folder / text.file_name, text.yaml)) return fault;
  return std::nullopt;
}

std::variant<ShelfEntry, Diagnostic> add_to_shelf(const Shelf& shelf, ShelfPart part) {
  if (auto fault = seed_shelf(shelf.folder)) return *fault;
  const std::string name = part.name;
  for (int number = 2; has_name(shelf, part.kind(), part.name); ++number)
    part.rename(name + " (" + std::to_string(number) + ")");
  const fs::path file = free_file(shelf.folder, part);
  if (auto fault = save_text(file, write_part(part))) return *fault;
  return ShelfEntry{std::move(part), file};
}

std::optional<Diagnostic> rename_on_shelf(const ShelfEntry& entry, const std::string& name) {
  const auto read = file_text(entry.file);
  if (const auto* fault = std::get_if<Diagnostic>(&read)) return *fault;
  return save_text(entry.file, with_part_name(std::get<std::string>(read), entry.part, name));
}

std::variant<std::string, Diagnostic> remove_from_shelf(const ShelfEntry& entry) {
  auto read = file_text(entry.file);
  if (std::holds_alternative<Diagnostic>(read)) return read;
  std::error_code fault;
  fs::remove(entry.file, fault);
  if (fault) return refused(entry.file, words_for_writing(fault.value()));
  return read;
}

}  // namespace gazewright
