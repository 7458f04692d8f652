#include "core/analysis/figures.h"

namespace gazewright {

std::span<const FigureRow> balance_figures() { return {}; }

}  // namespace gazewright
