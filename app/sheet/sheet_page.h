#pragma once

#include <QPainter>
#include <QString>

#include "app/plots/theme.h"

class QPagedPaintDevice;

namespace gazewright {

/// The font without hinting, which belongs to screens, and without ligatures, which a search for
/// "fits" in the file would miss.
QFont plain_letters(QFont font);

/// What stands on every page.
struct TitleBlock {
  QString title, file_name, revision, date, program;
};

struct TextStyle {
  double size_pt = 8;
  bool bold = false;
  QColor colour = theme_for(ThemeKind::print).text;
};

/// Pages that fill from the top, in points. Text is laid out at a sixteenth of its size's pixel, so
/// that letters stand as the font wants them and not on whole points.
class SheetPage {
 public:
  /// @param pages  how many there will be; 0 while they are being counted
  SheetPage(QPagedPaintDevice& device, TitleBlock block, int pages);
  SheetPage(const SheetPage&) = delete;
  SheetPage& operator=(const SheetPage&) = delete;

  QPainter& painter() { return painter_; }
  const Theme& theme() const { return theme_; }
  int pages() const { return page_; }
  QRectF frame() const { return frame_; }  ///< room for the content
  double y() const { return y_; }
  double left_over() const { return frame_.bottom() - y_; }

  void newPage();
  /// A new page unless `height` is left.
  void ensure(double height);
  void skip(double height) { y_ += height; }
  /// The next `height` of the frame's width.
  QRectF take(double height);

  void heading(const QString& text);
  void paragraph(const QString& text, const TextStyle& style = {});

  void text(const QRectF& rect, int flags, const QString& text, const TextStyle& style = {});
  static double textHeight(const QString& text, double width, const TextStyle& style);
  static double textWidth(const QString& text, const TextStyle& style);
  void rule(double y, const QColor& colour, double width = 0.5);

 private:
  void drawFooter();

  QPagedPaintDevice& device_;
  QPainter painter_;
  Theme theme_ = theme_for(ThemeKind::print);
  TitleBlock block_;
  int pages_;
  int page_ = 1;
  QRectF frame_;
  double y_ = 0;
};

}  // namespace gazewright
