#include "app/sheet/sheet_sections.h"

namespace gazewright {

void draw_supply(SheetPage&, const SheetContent&) {}

}  // namespace gazewright
