#include "core/analysis/figures.h"

namespace gazewright {

std::span<const FigureRow> budget_figures() { return {}; }

}  // namespace gazewright
