#pragma once

#include <string>

#include "app/window/card_row.h"
#include "core/rig/rig.h"

class QLabel;
class QToolButton;

namespace gazewright {

class Document;

/// The card that holds all keep-outs; one of them is "keep_outs[2]".
inline constexpr const char* kKeepOutsCard = "keep_outs";
std::string keep_out_path(std::size_t index);
/// "lamp post", or "Keep-out 3" where it has no name.
QString keep_out_title(const Rig& rig, std::size_t index);

/// Why the field at `path` cannot have the value that it has in `rig` ("It ends at ..., below where
/// it begins, ..."), or empty where it can or is no keep-out's.
QString keep_out_problem(const Rig& rig, const std::string& path);

/// Above a keep-out's fields: its name as a heading, and a button that takes it away.
class KeepOutHead : public CardRow {
  Q_OBJECT
 public:
  KeepOutHead(Document& document, std::size_t index);
  void refresh() override;

 private:
  Document& document_;
  std::size_t index_;
  QLabel* title_;
};

/// What keep-outs are for, and a button that adds one.
class KeepOutAdd : public CardRow {
  Q_OBJECT
 public:
  explicit KeepOutAdd(Document& document);
  void refresh() override;

 signals:
  void partChosen(const QString& part);

 private:
  Document& document_;
  QLabel* hint_;
  QToolButton* add_;
};

}  // namespace gazewright
