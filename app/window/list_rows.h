#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "app/window/card_row.h"
#include "core/rig/rig.h"

class QLabel;
class QToolButton;

namespace gazewright {

class Document;

/// A list of the rig whose entries stand on a card one below the other: keep-outs, detectors, moves
/// of the duty, materials.
struct CardList {
  std::string_view key;  ///< "keep_outs"
  const char* card;      ///< the part on whose card it stands
  const char* button;    ///< what its buttons' object names begin with: "keep_out.add"
  const char *add, *add_help, *added, *remove_help;
  const char* hint;  ///< what it is for, said while it is empty; may be empty
  std::size_t most;
  std::size_t (*count)(const Rig& rig);
  QString (*title)(const Rig& rig, std::size_t index);  ///< @pre index < count(rig)
  Rig (*with_new)(Rig rig);
  Rig (*without)(Rig rig, std::size_t index);
};
std::span<const CardList> card_lists();
/// @pre there is a list of that key
const CardList& card_list(std::string_view key);
/// The list on a card, or null.
const CardList* list_on(std::string_view card);

/// "keep_outs[2]"
std::string list_path(const CardList& list, std::size_t index);
/// The entry at, or around, a path.
struct ListPlace {
  const CardList* list;
  std::size_t index;
};
std::optional<ListPlace> list_place(std::string_view path);

/// Above an entry's fields: its name as a heading, and a button that takes it away.
class ListHead final : public CardRow {
  Q_OBJECT
 public:
  ListHead(Document& document, const ListPlace& place);
  void refresh() override;

 private:
  Document& document_;
  ListPlace place_;
  QLabel* title_;
};

/// What the list is for, and a button that adds an entry.
class ListAdd final : public CardRow {
  Q_OBJECT
 public:
  ListAdd(Document& document, const CardList& list);
  void refresh() override;

 signals:
  void partChosen(const QString& part);  ///< the new entry

 private:
  Document& document_;
  const CardList& list_;
  QLabel* hint_;
  QToolButton* add_;
};

}  // namespace gazewright
