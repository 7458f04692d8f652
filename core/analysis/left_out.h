#pragma once

#include "core/analysis/figures.h"

namespace gazewright {

/// Of what a quick analysis does without.
inline Answer left_out_of_drag() { return Answer::aside("worked out when nothing is dragged"); }

}  // namespace gazewright
