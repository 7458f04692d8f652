#include "core/analysis/pointing.h"

#include "core/analysis/context.h"

namespace gazewright {

PointingBudget pointing_budget(Context&, Axis) { return {}; }

}  // namespace gazewright
