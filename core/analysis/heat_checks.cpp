#include "core/analysis/checks.h"

namespace gazewright {

std::span<const Check> heat_checks() { return {}; }

}  // namespace gazewright
