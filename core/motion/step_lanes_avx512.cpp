// Compiled for machines with these registers only; core/motion/lanes.h says what that forbids.
#ifdef GAZEWRIGHT_WIDE_LANES
#include "core/motion/lane_attempts.h"

namespace gazewright {

void run_lanes_avx512(LaneWork& work) {
  using Wide = double __attribute__((vector_size(64)));
  LaneRun<Wide> lanes(work);
  lanes.run();
}

}  // namespace gazewright
#endif
