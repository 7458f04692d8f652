#include "core/analysis/checks.h"

namespace gazewright {

std::span<const Check> joint_checks() { return {}; }

}  // namespace gazewright
