#include "core/analysis/checks.h"

namespace gazewright {

std::span<const Check> budget_checks() { return {}; }

}  // namespace gazewright
