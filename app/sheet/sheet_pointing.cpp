#include "app/sheet/sheet_sections.h"

namespace gazewright {

void draw_pointing(SheetPage&, const SheetContent&) {}

}  // namespace gazewright
