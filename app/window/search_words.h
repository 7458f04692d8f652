#pragma once

#include <QStringList>

namespace gazewright {

QStringList words_of_search(const QString& text);
/// Whether the text has every word, in any order and any case.
bool has_words(const QString& text, const QStringList& words);

}  // namespace gazewright
