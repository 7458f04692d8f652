#pragma once

#include <QString>
#include <string_view>

namespace gazewright {

/// A choice of the rig file in plain words: "slip_ring" is "slip ring", "pla" is "PLA".
QString choice_word(std::string_view value);

}  // namespace gazewright
