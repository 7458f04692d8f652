#include "core/analysis/checks.h"

namespace gazewright {

std::span<const Check> balance_checks() { return {}; }

}  // namespace gazewright
