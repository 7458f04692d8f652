#pragma once

#include <span>
#include <string>
#include <string_view>

/// What people of the trade call the fields of a rig. Used by core/files only.
namespace gazewright {

struct TradeKey {
  std::string_view word;      ///< in small letters, without blanks, lines and points: "fieldofview"
  std::string_view key;       ///< of a field
  std::string_view how = {};  ///< how its value follows, where it is not the same: "half of them"
};
std::span<const TradeKey> trade_keys();

/// The key among `known` that a word of the trade stands for, whatever its capitals and lines; null
/// where there is none. A word may stand for several keys, of which a map knows one.
const TradeKey* trade_key(std::string_view word, std::span<const std::string> known);

}  // namespace gazewright
