#pragma once

#include <span>
#include <string_view>

#include "core/shelf/part.h"

/// What is particular to each kind of part, by the keys of its table. Used by core/shelf only.
namespace gazewright {

struct PartKeys {
  const char* name;                            ///< name_of(kind)
  std::span<const std::string_view> of_place;  ///< what belongs to the place, not to the part
  std::span<const std::string_view> telling;   ///< what tells one part of a kind from another
};
const PartKeys& keys_of(PartKind kind);

}  // namespace gazewright
