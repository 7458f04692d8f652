#pragma once

#include <string>

#include "app/window/card_row.h"
#include "core/rig/fields.h"

class QComboBox;
class QLineEdit;
class QPlainTextEdit;

namespace gazewright {

class Document;

/// A word out of a short list, e.g. encoder.at. The first entry leaves it to the default.
class ChoiceField : public CardRow {
  Q_OBJECT
 public:
  ChoiceField(Document& document, std::string path, const ChoiceInfo& info, const QString& part);
  void refresh() override;

 private:
  Document& document_;
  std::string path_;
  const ChoiceInfo& info_;
  QComboBox* combo_;
};

/// A name, or several lines of notes.
class TextField : public CardRow {
  Q_OBJECT
 public:
  TextField(Document& document, std::string path, const TextInfo& info, const QString& part);
  void refresh() override;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  std::string current() const;
  void commit(const QString& text);

  Document& document_;
  std::string path_;
  QString part_;
  QLineEdit* line_ = nullptr;
  QPlainTextEdit* lines_ = nullptr;
};

/// Whether stops or a cable are described, absent or not mentioned.
class PresenceField : public CardRow {
  Q_OBJECT
 public:
  PresenceField(Document& document, std::string part, const QString& title);
  void refresh() override;

 private:
  Document& document_;
  std::string part_;
  QComboBox* combo_;
};

}  // namespace gazewright
