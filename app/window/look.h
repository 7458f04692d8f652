#pragma once

#include "app/plots/theme.h"

class QApplication;
class QPalette;

namespace gazewright {

QPalette palette_of(const Theme& theme);
QString style_sheet_of(const Theme& theme);
/// Style, palette and style sheet of the whole program.
void apply_look(const Theme& theme);
/// Letters of the whole program, in percent of the desktop's font.
void set_text_size(int percent);
/// Menus, lists and tool tips appear at once and the text cursor does not blink; no longer calm:
/// what the desktop moves does again.
void set_calm(bool calm);

}  // namespace gazewright
