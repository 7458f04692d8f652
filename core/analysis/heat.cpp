#include "core/analysis/heat.h"

#include "core/analysis/context.h"

namespace gazewright {

HeatCurve heat_curve(Context&, Axis) { return {}; }

}  // namespace gazewright
