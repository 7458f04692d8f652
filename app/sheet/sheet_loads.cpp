#include "app/sheet/sheet_sections.h"

namespace gazewright {

void draw_loads(SheetPage&, const SheetContent&) {}

}  // namespace gazewright
