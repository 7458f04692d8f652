#pragma once

#include "app/window/card_row.h"

class QLabel;

namespace gazewright {

class Document;

/// Below the arm: which materials there are, and what is wrong with the arm's.
class MaterialNames final : public CardRow {
  Q_OBJECT
 public:
  explicit MaterialNames(Document& document);
  void refresh() override;

 private:
  Document& document_;
  QLabel *hint_, *problem_;
};

}  // namespace gazewright
