#include "core/shelf/shelf.h"

#include <algorithm>

#include "app/batch/output.h"
#include "app/batch/shelf_choice.h"
#include "app/batch/verbs.h"

namespace gazewright::batch {
namespace {

std::string figures_of(const ShelfPart& part) {
  std::string text;
  for (const std::string& figure : telling_figures(part))
    text += (text.empty() ? "" : ", ") + figure;
  return text;
}

std::string list_of(const Shelf& shelf) {
  std::size_t widest = 0;
  for (const ShelfEntry& entry : shelf.entries)
    widest = std::max(widest, width(one_line(entry.part.name)));
  std::string text;
  for (const ShelfEntry& entry : shelf.entries)
    text += padded(name_of(entry.part.kind()), 9) + padded(one_line(entry.part.name), widest) +
            "  " + figures_of(entry.part) + '\n';
  return text;
}

std::string summary_of(const Shelf& shelf) {
  std::string text = "shelf: " + shelf.folder.string() + '\n';
  if (!shelf.entries.empty() && shelf.entries.front().file.empty())
    text += "it is not there yet; these are the built-in parts\n";
  for (const PartKind kind : kPartKinds)
    text += padded(name_of(kind), 9) + std::to_string(shelf.of(kind).size()) + '\n';
  return text;
}

}  // namespace

std::optional<Shelf> chosen_shelf(const Command& command) {
  std::error_code ignored;
  if (!command.shelf.empty() && !std::filesystem::is_directory(command.shelf, ignored)) {
    complain("there is no folder " + command.shelf,
             "name the folder that holds the files of your parts", kBadRig);
    return std::nullopt;
  }
  Shelf shelf = load_shelf(command.shelf.empty() ? usual_shelf_folder()
                                                 : std::filesystem::path(command.shelf));
  tell(shelf.problems);
  return shelf;
}

int run_shelf(const Command& command) {
  const auto shelf = chosen_shelf(command);
  if (!shelf) return kBadRig;
  return write_out(command.list ? list_of(*shelf) : summary_of(*shelf));
}

}  // namespace gazewright::batch
