#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace gazewright {

/// A text with the small letters of ASCII for its capital ones, the same in every locale.
std::string in_small_letters(std::string_view text);

/// Whether two words are the same, capital letters of ASCII aside.
bool is_same_word(std::string_view a, std::string_view b);

/// How many letters must be added, dropped, changed or swapped with a neighbour to turn one word
/// into the other (optimal string alignment distance).
int edit_distance(std::string_view a, std::string_view b);

/// The known word that a mistyped one is nearest to, or empty where none is near.
std::string nearest_word(std::string_view word, std::span<const std::string> known);

}  // namespace gazewright
