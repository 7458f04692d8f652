#include "core/analysis/figures.h"

namespace gazewright {

std::span<const FigureRow> joint_figures() { return {}; }

}  // namespace gazewright
