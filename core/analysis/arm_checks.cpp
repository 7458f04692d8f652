#include "core/analysis/checks.h"

namespace gazewright {

std::span<const Check> arm_checks() { return {}; }

}  // namespace gazewright
