#pragma once

namespace gazewright {

/// Roles and values of the widgets that paint themselves, for screen readers: a ratio scale is a
/// slider, a plot a chart, a dial a dial, the drawing a canvas.
void install_accessibility();

}  // namespace gazewright
