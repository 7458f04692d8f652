#pragma once

#include <QColor>
#include <QString>

#include "core/analysis/analysis.h"

/// Colours of window, plots and sheet. Text reaches 4.5:1 and graphics 3:1 on both `card` and
/// `surface` (WCAG 2.2, 1.4.3 and 1.4.11); tests/app/plots_theme_test.cpp checks every pair.
namespace gazewright {

enum class ThemeKind { light, dark, high_contrast, print };

struct Theme {
  ThemeKind kind = ThemeKind::light;
  QColor surface;      ///< behind the cards
  QColor card;         ///< ground of cards, plots and fields
  QColor border;       ///< quiet edge of a card; carries no meaning
  QColor control;      ///< edge of a control, axis lines of a plot
  QColor text, quiet;  ///< text, and text of lesser weight
  QColor grid;         ///< behind data; carries no meaning
  QColor pan, tilt;    ///< lines and fills of an axis
  QColor pan_text, tilt_text;
  QColor good, tight, bad, unknown;  ///< verdicts, good enough for text
  QColor ghost;                      ///< what was before
  QColor neutral;                    ///< fills of parts that belong to no axis
  QColor band;                       ///< tint of allowed bands, behind data
  QColor focus;                      ///< focus frames and selection

  bool is_dark() const { return card.lightness() < 128; }
};

Theme theme_for(ThemeKind kind);
/// High contrast on black, for a desktop that asks for dark and for contrast. Its kind is
/// high_contrast.
Theme dark_contrast_theme();

QColor axis_colour(const Theme& theme, Axis axis);
QColor axis_text_colour(const Theme& theme, Axis axis);
QString axis_word(Axis axis);  ///< "Pan", "Tilt", translated
QColor verdict_colour(const Theme& theme, Verdict verdict);
QString verdict_symbol(Verdict verdict);  ///< ✓ ▲ ✕ ?
QString verdict_word(Verdict verdict);    ///< "holds" ..., translated

/// Contrast of two opaque colours, 1 … 21. Source: WCAG 2.2, definition of contrast ratio.
double contrast_ratio(const QColor& a, const QColor& b);
/// `colour` laid over `ground` with the given opacity, as an opaque colour (prints everywhere).
QColor blended(const QColor& colour, const QColor& ground, double opacity);

}  // namespace gazewright
