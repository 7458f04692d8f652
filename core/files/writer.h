#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/files/reader.h"

/// From the rig to YAML. Used by core/files only.
namespace gazewright {

/// The value of a quantity as a file entry: as written where that still says the value, else made
/// from it. @pre the quantity has a value.
std::string value_text(const Quantity& quantity, const FieldInfo& info);
/// Its spread as a file entry, or empty where there is none.
std::string spread_text(const Quantity& quantity, const FieldInfo& info);
/// The whole entry as YAML: "118 g.cm2" or "{value: 118 g.cm2, spread: 5 %, source: measured}".
std::string quantity_text(const Quantity& quantity, const FieldInfo& info);

/// The rig as reading what is written gives it: every value with its text.
Rig as_read_back(const Rig& rig);

/// The whole file laid out anew.
std::string laid_out(const Rig& rig);
/// One of its variants as lines of the list.
std::string variant_lines(const Rig& rig, std::size_t index);

/// A stretch of a text that another one takes the place of.
struct TextEdit {
  std::size_t at = 0, length = 0;
  std::string text;
};
/// Puts the rig's variants into the text in place of the old ones; those that did not change stay
/// as they are written. Empty where that cannot be done.
std::optional<TextEdit> variants_edit(const Rig& rig, std::string_view text, const ReadText& old);

/// The original with only the changed entries replaced or put in; empty where that cannot be done
/// or would not read back as the rig.
/// @param old  the original, read without an error
std::optional<std::string> edited_in_place(const Rig& rig, std::string_view original,
                                           const ReadText& old);

}  // namespace gazewright
