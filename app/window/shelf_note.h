#pragma once

#include <memory>

#include "app/window/card_row.h"
#include "core/shelf/shelf.h"

class QLabel;

namespace gazewright {

class Document;

/// Under the name of a motor or gearbox: in which values it is not the shelf's part of that name
/// any more. The name stays what the user made it.
class ShelfNote : public CardRow {
  Q_OBJECT
 public:
  /// @param shelf  outlives the note; null until it is read
  ShelfNote(Document& document, Axis axis, PartKind kind,
            const std::shared_ptr<const Shelf>& shelf);
  void refresh() override;
  QString text() const;  ///< empty where there is nothing to say

 private:
  Document& document_;
  Axis axis_;
  PartKind kind_;
  const std::shared_ptr<const Shelf>& shelf_;
  QLabel* note_;
};

}  // namespace gazewright
