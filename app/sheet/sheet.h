#pragma once

#include <QByteArray>
#include <QPageLayout>
#include <QString>

#include "app/sheet/write_sheet.h"

class QPagedPaintDevice;

/// The sheet for Qt code: as bytes, or onto a printer.
namespace gazewright {

struct SheetContent {
  const Rig& rig;
  const Analysis& analysis;
  const std::array<RatioSweep, 2>* sweeps = nullptr;
  SheetOptions options;
};

/// What the document is called where it is printed or kept.
QString sheet_title(const SheetContent& content);
QPageLayout sheet_layout(Paper paper);
/// The PDF file in memory.
QByteArray sheet_pdf(const SheetContent& content);
/// Paints the pages on a printer or PDF writer whose page is already set. Returns the number of
/// pages.
int paint_sheet(QPagedPaintDevice& device, const SheetContent& content);

}  // namespace gazewright
