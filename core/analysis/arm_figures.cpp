#include "core/analysis/figures.h"

namespace gazewright {

std::span<const FigureRow> arm_figures() { return {}; }

}  // namespace gazewright
