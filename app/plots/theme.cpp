#include "app/plots/theme.h"

#include <algorithm>
#include <cmath>

#include "app/plots/text.h"

namespace gazewright {
namespace {

Theme light_theme() {
  return {.kind = ThemeKind::light,
          .surface = "#f2f3f5",
          .card = "#ffffff",
          .border = "#d5d8de",
          .control = "#767c88",
          .text = "#1b1f2a",
          .quiet = "#5a6270",
          .grid = "#e6e8ec",
          .pan = "#0072b2",
          .tilt = "#d55e00",
          .pan_text = "#0068a3",
          .tilt_text = "#ad4a00",
          .good = "#1b6b3a",
          .tight = "#805300",
          .bad = "#b3221d",
          .unknown = "#5a6270",
          .ghost = "#6e7684",
          .neutral = "#808793",
          .band = "#dff0e4",
          .focus = "#0b57d0"};
}

Theme dark_theme() {
  return {.kind = ThemeKind::dark,
          .surface = "#16181d",
          .card = "#1f2229",
          .border = "#363b45",
          .control = "#8a92a0",
          .text = "#e8eaee",
          .quiet = "#a9b0bc",
          .grid = "#30343d",
          .pan = "#56b4e9",
          .tilt = "#ff8a3d",
          .pan_text = "#6cc0f0",
          .tilt_text = "#ff9a57",
          .good = "#6ccb8b",
          .tight = "#e5b454",
          .bad = "#ff8a80",
          .unknown = "#a9b0bc",
          .ghost = "#8a92a0",
          .neutral = "#8a92a0",
          .band = "#22362b",
          .focus = "#8ab4f8"};
}

Theme high_contrast_theme() {
  Theme theme = light_theme();
  theme.kind = ThemeKind::high_contrast;
  theme.surface = theme.card = "#ffffff";
  theme.border = theme.control = theme.text = theme.quiet = "#000000";
  theme.grid = "#c4c8cf";
  theme.pan = theme.pan_text = "#004a78";
  theme.tilt = theme.tilt_text = "#8f3b00";
  theme.good = "#0b4a23";
  theme.tight = "#5c3b00";
  theme.bad = "#8c0f0b";
  theme.unknown = theme.ghost = theme.neutral = "#3a3f48";
  theme.focus = "#0038a8";
  return theme;
}

/// Relative luminance of an sRGB colour, WCAG 2.2.
double luminance(const QColor& colour) {
  const auto linear = [](double c) {
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
         0.0722 * linear(colour.blueF());
}

}  // namespace

Theme theme_for(ThemeKind kind) {
  switch (kind) {
    case ThemeKind::light:
      return light_theme();
    case ThemeKind::dark:
      return dark_theme();
    case ThemeKind::high_contrast:
      return high_contrast_theme();
    case ThemeKind::print:
      break;
  }
  Theme theme = light_theme();
  theme.kind = ThemeKind::print;
  theme.surface = theme.card;
  theme.pan = theme.pan_text = "#00517f";  // in grey as unlike tilt's as it can be kept blue
  return theme;
}

Theme dark_contrast_theme() {
  Theme theme = dark_theme();
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

QColor axis_colour(const Theme& theme, Axis axis) {
  return axis == Axis::pan ? theme.pan : theme.tilt;
}

QColor axis_text_colour(const Theme& theme, Axis axis) {
  return axis == Axis::pan ? theme.pan_text : theme.tilt_text;
}

QString axis_word(Axis axis) { return axis == Axis::pan ? Plots::tr("Pan") : Plots::tr("Tilt"); }

QColor verdict_colour(const Theme& theme, Verdict verdict) {
  switch (verdict) {
    case Verdict::holds:
      return theme.good;
    case Verdict::tight:
      return theme.tight;
    case Verdict::fails:
      return theme.bad;
    case Verdict::unknown:
      break;
  }
  return theme.unknown;
}

QString verdict_symbol(Verdict verdict) {
  switch (verdict) {
    case Verdict::holds:
      return QStringLiteral("✓");
    case Verdict::tight:
      return QStringLiteral("▲");
    case Verdict::fails:
      return QStringLiteral("✕");
    case Verdict::unknown:
      break;
  }
  return QStringLiteral("?");
}

QString verdict_word(Verdict verdict) {
  switch (verdict) {
    case Verdict::holds:
      return Plots::tr("holds");
    case Verdict::tight:
      return Plots::tr("tight");
    case Verdict::fails:
      return Plots::tr("fails");
    case Verdict::unknown:
      break;
  }
  return Plots::tr("unknown");
}

double contrast_ratio(const QColor& a, const QColor& b) {
  const auto [low, high] = std::minmax({luminance(a), luminance(b)});
  return (high + 0.05) / (low + 0.05);
}

QColor blended(const QColor& colour, const QColor& ground, double opacity) {
  const auto mix = [opacity](int c, int g) {
    return static_cast<int>(std::lround(opacity * c + (1 - opacity) * g));
  };
  return {mix(colour.red(), ground.red()), mix(colour.green(), ground.green()),
          mix(colour.blue(), ground.blue())};
}

}  // namespace gazewright
