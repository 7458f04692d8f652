#include "core/analysis/checks.h"

namespace gazewright {

std::span<const Check> stand_checks() { return {}; }

}  // namespace gazewright
