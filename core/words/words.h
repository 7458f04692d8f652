#pragma once

#include <initializer_list>
#include <string>
#include <string_view>

/// Text for people, in their language. What core says it writes in English where it says it; that
/// text is the key under which a translation is looked up.
namespace gazewright {

/// The translation of an English text; empty where there is none. Called from any thread.
using Translate = std::string (*)(std::string_view english);

/// What `words` asks from now on; null: everything stays English, as it is until the first call.
/// The window calls it once at its start, the batch program never: what scripts read is English.
void use_translation(Translate translate);

/// "%1 at %2" with its holes filled; a text without holes as it is. Translations may put the holes
/// in another order. A text that is a translation already stays as it is. @param english  a
/// literal: `words` finds texts to translate by its calls
std::string words(std::string_view english, std::initializer_list<std::string_view> holes);

template <class... Holes>
std::string words(std::string_view english, const Holes&... holes) {
  return words(english, std::initializer_list<std::string_view>{std::string_view(holes)...});
}

/// Marks a literal that is looked up elsewhere, for cmake/words.py.
constexpr std::string_view for_words(std::string_view english) { return english; }

/// Whether no translation is in use.
bool is_english();
/// A label of a table within a sentence: in English it begins with a small letter there.
std::string in_sentence(std::string_view label);

/// Whether a text in the user's language begins as the English one does before its first hole:
/// begins_as("needs %1", because).
bool begins_as(std::string_view english, std::string_view text);

}  // namespace gazewright
