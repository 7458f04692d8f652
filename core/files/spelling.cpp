#include "core/files/spelling.h"

#include <algorithm>

namespace gazewright {

namespace {

char small(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

}  // namespace

std::string in_small_letters(std::string_view text) {
  std::string letters(text);
  std::ranges::transform(letters, letters.begin(), small);
  return letters;
}

bool is_same_word(std::string_view a, std::string_view b) {
  return std::ranges::equal(a, b, {}, small, small);
}

int edit_distance(std::string_view a, std::string_view b) {
  std::vector<int> before_last(b.size() + 1), last(b.size() + 1), row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) last[j] = static_cast<int>(j);
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = static_cast<int>(i);
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const int change = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      row[j] = std::min({change, last[j] + 1, row[j - 1] + 1});
      const bool is_swap = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
      if (is_swap) row[j] = std::min(row[j], before_last[j - 2] + 1);
    }
    before_last.swap(last);
    last.swap(row);
  }
  return last[b.size()];
}

std::string nearest_word(std::string_view word, std::span<const std::string> known) {
  constexpr std::size_t kLongest = 64;
  if (word.size() > kLongest) return "";
  std::string nearest;
  int least = std::max(1, static_cast<int>(word.size()) / 3) + 1;  // a third of its letters
  for (const std::string& candidate : known) {
    const int distance = edit_distance(word, candidate);
    if (distance >= least) continue;
    least = distance;
    nearest = candidate;
  }
  return nearest;
}

}  // namespace gazewright
