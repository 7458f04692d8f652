#pragma once

#include <optional>
#include <string_view>

#include "app/window/card_row.h"

class QLabel;
class QToolButton;

namespace gazewright {

class Document;

/// 2 for "duty[2]"; empty where the path is no move of the duty.
std::optional<std::size_t> duty_index(std::string_view path);
QString duty_move_title(std::size_t index);

/// Above a move's fields: which one it is, and a button that takes it away.
class DutyHead final : public CardRow {
  Q_OBJECT
 public:
  DutyHead(Document& document, std::size_t index);
  void refresh() override {}
};

/// What the duty is for, and a button that adds a move to it.
class DutyAdd final : public CardRow {
  Q_OBJECT
 public:
  explicit DutyAdd(Document& document);
  void refresh() override;

 private:
  Document& document_;
  QLabel* hint_;
  QToolButton* add_;
};

}  // namespace gazewright
