#include "core/analysis/figures.h"

namespace gazewright {

std::span<const FigureRow> bearing_figures() { return {}; }

}  // namespace gazewright
