#pragma once

#include "app/plots/theme.h"

namespace gazewright {

/// High contrast on black, for a desktop that asks for dark and for contrast. Its kind is
/// high_contrast.
Theme dark_contrast_theme();

}  // namespace gazewright
