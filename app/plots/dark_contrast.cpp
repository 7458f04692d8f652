#include "app/plots/dark_contrast.h"

namespace gazewright {

Theme dark_contrast_theme() {
  Theme theme = theme_for(ThemeKind::dark);
  theme.kind = ThemeKind::high_contrast;
  theme.surface = theme.card = "#000000";
  theme.border = theme.control = theme.text = theme.quiet = "#ffffff";
  theme.grid = "#4a4f58";
  theme.pan = theme.pan_text = "#7cc8f5";
  theme.tilt = theme.tilt_text = "#ffa766";
  theme.good = "#8ff0ae";
  theme.tight = "#ffd27a";
  theme.bad = "#ffa79f";
  theme.unknown = theme.ghost = theme.neutral = "#d0d5dd";
  theme.band = "#12301f";
  theme.focus = "#a9c7ff";
  return theme;
}

}  // namespace gazewright
