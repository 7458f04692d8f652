#pragma once

#include <QCoreApplication>
#include <QString>
#include <string_view>

#include "core/words/words.h"

namespace gazewright {

/// Translation context of free functions in app/plots and app/sheet: Plots::tr("Time").
struct Plots {
  Q_DECLARE_TR_FUNCTIONS(Plots)
};

/// Text of core, which is UTF-8.
inline QString qstring(std::string_view text) {
  return QString::fromUtf8(text.data(), qsizetype(text.size()));
}
/// A text of core's tables in the user's language.
inline QString worded(std::string_view english) { return QString::fromStdString(words(english)); }
/// A label within a sentence: English begins it small there, other languages as it is.
inline QString mid_sentence(const QString& label) {
  return QString::fromStdString(in_sentence(label.toStdString()));
}
/// Text that begins a sentence: with a capital.
inline QString sentence_start(const QString& text) { return text.left(1).toUpper() + text.mid(1); }

}  // namespace gazewright
