#pragma once

#include <string>
#include <string_view>

namespace gazewright {

/// "3 % is common practice": a share with where its data file has it from, up to the first comma.
std::string say_rule(double part, std::string_view file, std::string_view row,
                     std::string_view key);

}  // namespace gazewright
