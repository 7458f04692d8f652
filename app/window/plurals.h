#pragma once

#include <QTranslator>

namespace gazewright {

/// The English sentences about one of a kind: what tr() writes for many is right for all other
/// counts. A translation that is installed after it comes first.
class Plurals : public QTranslator {
  Q_OBJECT
 public:
  using QTranslator::QTranslator;
  bool isEmpty() const override { return false; }
  QString translate(const char* context, const char* source, const char* disambiguation,
                    int count) const override;
};

}  // namespace gazewright
