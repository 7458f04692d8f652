#pragma once

#include <optional>
#include <string_view>

namespace gazewright {

/// The hottest temperature that the insulation of a thermal class ("F") bears; empty for none of
/// them. [K] Source: IEC 60085 (as public motor manuals print it; N from memory).
std::optional<double> insulation_limit_K(std::string_view name);

}  // namespace gazewright
