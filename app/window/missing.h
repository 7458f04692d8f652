#pragma once

#include <QString>
#include <string_view>

#include "core/analysis/analysis.h"

namespace gazewright {

/// What a missing entry costs: "missing: 14 figures are unknown, such as the shortest time of the
/// move". Empty where no figure waits for it.
QString missing_cost(const Analysis& analysis, std::string_view path);

}  // namespace gazewright
