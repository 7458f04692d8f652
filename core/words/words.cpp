#include "core/words/words.h"

#include <atomic>

namespace gazewright {
namespace {

std::atomic<Translate> the_translation{nullptr};

std::string in_language(std::string_view english) {
  const Translate translate = the_translation.load(std::memory_order_relaxed);
  if (translate == nullptr || english.empty()) return std::string(english);
  std::string text = translate(english);
  return text.empty() ? std::string(english) : text;
}

bool is_capital(char c) { return c >= 'A' && c <= 'Z'; }

}  // namespace

void use_translation(Translate translate) {
  the_translation.store(translate, std::memory_order_relaxed);
}

std::string words(std::string_view english, std::initializer_list<std::string_view> holes) {
  const std::string text = in_language(english);
  if (holes.size() == 0) return text;
  std::string filled;
  filled.reserve(2 * text.size());
  for (std::size_t i = 0; i < text.size(); ++i) {
    const std::size_t hole = i + 1 < text.size() && text[i] == '%'
                                 ? static_cast<std::size_t>(text[i + 1] - '1')
                                 : holes.size();
    if (hole < holes.size()) {
      filled += holes.begin()[hole];
      ++i;
    } else {
      filled += text[i];
    }
  }
  return filled;
}

bool is_english() { return the_translation.load(std::memory_order_relaxed) == nullptr; }

std::string in_sentence(std::string_view label) {
  std::string text = in_language(label);
  const bool is_name = label.starts_with("Coulomb") || (label.size() > 1 && is_capital(label[1]));
  if (is_english() && !is_name && !text.empty() && is_capital(text[0]))
    text[0] = static_cast<char>(text[0] - 'A' + 'a');
  return text;
}

bool begins_as(std::string_view english, std::string_view text) {
  const std::string whole = in_language(english);
  return text.starts_with(std::string_view(whole).substr(0, whole.find('%')));
}

}  // namespace gazewright
