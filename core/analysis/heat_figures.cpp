#include "core/analysis/figures.h"

namespace gazewright {

std::span<const FigureRow> heat_figures() { return {}; }

}  // namespace gazewright
