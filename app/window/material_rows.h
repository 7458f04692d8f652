#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "app/window/card_row.h"
#include "core/rig/rig.h"

class QLabel;
class QToolButton;

namespace gazewright {

class Document;

/// The rig's own materials stand on the stand's card; one of them is "materials[2]".
std::string material_path(std::size_t index);
std::optional<std::size_t> material_index(std::string_view path);

/// Above a material's fields: its name as a heading, and a button that takes it away.
class MaterialHead : public CardRow {
  Q_OBJECT
 public:
  MaterialHead(Document& document, std::size_t index);
  void refresh() override;

 private:
  Document& document_;
  std::size_t index_;
  QLabel* title_;
};

/// Which materials there are, what is wrong with the arm's, and a button that adds one to the rig.
class MaterialAdd : public CardRow {
  Q_OBJECT
 public:
  explicit MaterialAdd(Document& document);
  void refresh() override;

 private:
  Document& document_;
  QLabel *hint_, *problem_;
  QToolButton* add_;
};

}  // namespace gazewright
