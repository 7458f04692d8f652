#include "core/analysis/bus.h"

#include "core/analysis/context.h"

namespace gazewright {

BusCurve bus_curve(Context&) { return {}; }

}  // namespace gazewright
