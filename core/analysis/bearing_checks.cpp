#include "core/analysis/checks.h"

namespace gazewright {

std::span<const Check> bearing_checks() { return {}; }

}  // namespace gazewright
