#include "core/analysis/figures.h"

namespace gazewright {

std::span<const FigureRow> stand_figures() { return {}; }

}  // namespace gazewright
