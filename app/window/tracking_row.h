#pragma once

#include "app/window/card_row.h"

class QLabel;

namespace gazewright {

class Document;

/// Below the fields of tracking: the path of the target.
class TrackingRow final : public CardRow {
  Q_OBJECT
 public:
  explicit TrackingRow(Document& document);
  void refresh() override;
  /// Takes the path of a CSV file; what is wrong with it is shown below the button.
  void importPath(const QString& file);

 private:
  void choosePath();

  Document& document_;
  QLabel *path_, *problem_;
};

}  // namespace gazewright
