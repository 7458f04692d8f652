#include "app/sheet/sheet_sections.h"

namespace gazewright {

void draw_heat(SheetPage&, const SheetContent&) {}

}  // namespace gazewright
