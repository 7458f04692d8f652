#include "app/sheet/sheet.h"

#include <QBuffer>
#include <QDate>
#include <QLocale>
#include <QPdfWriter>

#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "gazewright_version.h"

namespace gazewright {
namespace {

TitleBlock title_block(const SheetContent& content) {
  const SheetOptions& options = content.options;
  return {.title = QString::fromStdString(content.rig.title),
          .file_name = QString::fromStdString(options.file_name),
          .revision = QString::fromStdString(options.revision),
          .date = options.date.empty()
                      ? QLocale().toString(QDate::currentDate(), QLocale::ShortFormat)
                      : QString::fromStdString(options.date),
          .program = QStringLiteral("Gazewright %1").arg(QLatin1String(kVersion))};
}

int paint_pages(QPagedPaintDevice& device, const SheetContent& content, int pages) {
  SheetPage page(device, title_block(content), pages);
  // Whoever builds reads from the front and may stop where the building ends.
  draw_title(page, content);
  draw_views(page, content);
  draw_verdicts(page, content);
  draw_drive_lines(page, content);
  draw_settings(page, content);
  draw_parts(page, content);
  draw_sizes(page, content);
  draw_homing(page, content);
  draw_cautions(page, content);
  draw_plots(page, content);
  draw_limits(page, content);
  draw_advice(page, content);
  draw_profiles(page, content);
  draw_doubts(page, content);
  draw_variants(page, content);
  draw_unknown(page, content);
  draw_held(page, content);
  draw_figures(page, content);
  draw_tracking(page, content);
  draw_heat(page, content);
  draw_supply(page, content);
  draw_balance(page, content);
  draw_pointing(page, content);
  draw_inputs(page, content);
  draw_signatures(page, content);
  return page.pages();
}

/// How many pages there will be: the sheet is drawn once for nobody.
int count_pages(const QPageLayout& layout, const SheetContent& content) {
  QBuffer nowhere;
  nowhere.open(QIODevice::WriteOnly);
  QPdfWriter writer(&nowhere);
  writer.setPageLayout(layout);
  return paint_pages(writer, content, 0);
}

}  // namespace

QString sheet_title(const SheetContent& content) {
  return Plots::tr("%1, design sheet").arg(QString::fromStdString(content.rig.title));
}

QPageLayout sheet_layout(Paper paper) {
  const QPageSize size(paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter);
  return {size, QPageLayout::Portrait, QMarginsF(15, 13, 15, 10), QPageLayout::Millimeter};
}

int paint_sheet(QPagedPaintDevice& device, const SheetContent& content) {
  return paint_pages(device, content, count_pages(device.pageLayout(), content));
}

QByteArray sheet_pdf(const SheetContent& content) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setPageLayout(sheet_layout(content.options.paper));
  writer.setTitle(sheet_title(content));
  writer.setCreator(QStringLiteral("Gazewright %1").arg(QLatin1String(kVersion)));
  paint_sheet(writer, content);
  return buffer.data();
}

}  // namespace gazewright
