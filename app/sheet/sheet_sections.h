#pragma once

#include "app/sheet/sheet.h"
#include "app/sheet/sheet_page.h"

/// The sections of the sheet, in their order.
namespace gazewright {

// At a glance: what it is, and what to do about it.
void draw_title(SheetPage& page, const SheetContent& content);
void draw_views(SheetPage& page, const SheetContent& content);
void draw_verdicts(SheetPage& page, const SheetContent& content);
void draw_drive_lines(SheetPage& page, const SheetContent& content);
// To build from.
void draw_settings(SheetPage& page, const SheetContent& content);
void draw_parts(SheetPage& page, const SheetContent& content);
void draw_sizes(SheetPage& page, const SheetContent& content);
void draw_homing(SheetPage& page, const SheetContent& content);
void draw_cautions(SheetPage& page, const SheetContent& content);
// To look into.
void draw_plots(SheetPage& page, const SheetContent& content);
void draw_unknown(SheetPage& page, const SheetContent& content);
void draw_held(SheetPage& page, const SheetContent& content);
void draw_figures(SheetPage& page, const SheetContent& content);
void draw_doubts(SheetPage& page, const SheetContent& content);
void draw_variants(SheetPage& page, const SheetContent& content);
void draw_limits(SheetPage& page, const SheetContent& content);
void draw_advice(SheetPage& page, const SheetContent& content);
void draw_profiles(SheetPage& page, const SheetContent& content);
void draw_tracking(SheetPage& page, const SheetContent& content);
void draw_heat(SheetPage& page, const SheetContent& content);
void draw_supply(SheetPage& page, const SheetContent& content);
void draw_balance(SheetPage& page, const SheetContent& content);
void draw_pointing(SheetPage& page, const SheetContent& content);
void draw_inputs(SheetPage& page, const SheetContent& content);
void draw_signatures(SheetPage& page, const SheetContent& content);

/// A paragraph with a mark at its left, in the colour of the axis: "Pan 2".
void draw_marked(SheetPage& page, std::optional<Axis> axis, const QString& mark,
                 const QString& text);

QString source_text(Source source);  ///< "measured"; "source not stated"
/// "2 fail, 3 tight, 21 hold"; what does not occur is left out.
QString verdict_count(const std::vector<Finding>& findings);

}  // namespace gazewright
