#pragma once

#include "app/plots/theme.h"

class QApplication;
class QPalette;

namespace gazewright {

QPalette palette_of(const Theme& theme);
QString style_sheet_of(const Theme& theme);
/// Style, palette and style sheet of the whole program.
void apply_look(const Theme& theme);
/// Menus, lists and tool tips appear at once; no longer calm: those that the desktop moves do
/// again.
void set_calm(bool calm);

}  // namespace gazewright
