#include "core/analysis/figures.h"

namespace gazewright {

std::span<const FigureRow> supply_figures() { return {}; }

}  // namespace gazewright
