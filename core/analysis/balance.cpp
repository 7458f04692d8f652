#include "core/analysis/balance.h"

#include "core/analysis/context.h"

namespace gazewright {

GravityOverTravel gravity_over_travel(Context&, Axis) { return {}; }

}  // namespace gazewright
