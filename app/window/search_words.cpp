#include "app/window/search_words.h"

#include <algorithm>

namespace gazewright {

QStringList words_of_search(const QString& text) {
  return text.simplified().split(' ', Qt::SkipEmptyParts);
}

bool has_words(const QString& text, const QStringList& words) {
  return std::ranges::all_of(
      words, [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

}  // namespace gazewright
