#include "app/sheet/sheet_page.h"

#include <QApplication>
#include <QFontMetricsF>
#include <QPagedPaintDevice>
#include <cmath>

#include "app/plots/text.h"

namespace gazewright {
namespace {

constexpr double kFine = 16;  ///< units of text layout per point
constexpr double kFooter = 26;

QFont fine_font(const TextStyle& style) {
  QFont font = QApplication::font();
  font.setPixelSize(int(std::lround(style.size_pt * kFine)));
  font.setBold(style.bold);
  return plain_letters(font);
}

}  // namespace

QFont plain_letters(QFont font) {
  font.setHintingPreference(QFont::PreferNoHinting);
  font.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);  // any spacing turns ligatures off
  return font;
}

SheetPage::SheetPage(QPagedPaintDevice& device, TitleBlock block, int pages)
    : device_(device), painter_(&device), block_(std::move(block)), pages_(pages) {
  const double scale = device.logicalDpiX() / 72.0;
  painter_.scale(scale, scale);
  painter_.setRenderHint(QPainter::Antialiasing);
  const QSizeF size = device.pageLayout().paintRect(QPageLayout::Point).size();
  frame_ = QRectF(0, 0, size.width(), size.height() - kFooter);
  drawFooter();
}

void SheetPage::newPage() {
  device_.newPage();
  ++page_;
  y_ = 0;
  drawFooter();
}

void SheetPage::ensure(double height) {
  if (y_ > 0 && height > left_over()) newPage();
}

QRectF SheetPage::take(double height) {
  ensure(height);
  const QRectF rect(frame_.left(), y_, frame_.width(), height);
  y_ += height;
  return rect;
}

void SheetPage::text(const QRectF& rect, int flags, const QString& text, const TextStyle& style) {
  painter_.save();
  painter_.translate(rect.topLeft());
  painter_.scale(1 / kFine, 1 / kFine);
  painter_.setFont(fine_font(style));
  painter_.setPen(style.colour);
  painter_.drawText(QRectF(0, 0, rect.width() * kFine, rect.height() * kFine),
                    flags | Qt::TextDontClip, text);
  painter_.restore();
}

double SheetPage::textHeight(const QString& text, double width, const TextStyle& style) {
  // The device's letters may be a little wider than those of the screen that measures them.
  constexpr double kReserve = 0.98;
  const QFontMetricsF metrics(fine_font(style));
  const QRectF room(0, 0, width * kFine * kReserve, 1e6);
  return metrics.boundingRect(room, Qt::TextWordWrap, text).height() / kFine;
}

double SheetPage::textWidth(const QString& text, const TextStyle& style) {
  return QFontMetricsF(fine_font(style)).horizontalAdvance(text) / kFine;
}

void SheetPage::rule(double y, const QColor& colour, double width) {
  painter_.setPen(QPen(colour, width));
  painter_.drawLine(QLineF(frame_.left(), y, frame_.right(), y));
}

void SheetPage::heading(const QString& heading_text) {
  const double gap = y_ > 0 ? 12 : 0;
  ensure(gap + 60);  // a heading never stands alone at the foot of a page
  if (y_ > 0) y_ += gap;
  text({frame_.left(), y_, frame_.width(), 14}, Qt::AlignLeft | Qt::AlignVCenter, heading_text,
       {11, true, theme_.text});
  y_ += 18;
}

void SheetPage::paragraph(const QString& paragraph_text, const TextStyle& style) {
  const double height = textHeight(paragraph_text, frame_.width(), style);
  const QRectF rect = take(height + 3);
  text(rect, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, paragraph_text, style);
}

void SheetPage::drawFooter() {
  const double top = frame_.bottom() + kFooter - 16;
  rule(top, theme_.control, 0.6);
  const TextStyle style{7, false, theme_.quiet};
  const QRectF line(frame_.left(), top + 3, frame_.width(), 12);
  QStringList parts{block_.title};
  if (!block_.file_name.isEmpty()) parts << block_.file_name;
  parts << Plots::tr("revision %1")
               .arg(block_.revision.isEmpty() ? QStringLiteral("____") : block_.revision)
        << block_.date << block_.program;
  const QString page = Plots::tr("page %1 of %2").arg(page_).arg(pages_);
  const QFontMetricsF metrics(fine_font(style));
  const double room = frame_.width() - textWidth(page, style) - 12;
  text(line, Qt::AlignLeft | Qt::AlignVCenter,
       metrics.elidedText(parts.join(QStringLiteral("  ·  ")), Qt::ElideMiddle, room * kFine),
       style);
  text(line, Qt::AlignRight | Qt::AlignVCenter, page, style);
}

}  // namespace gazewright
