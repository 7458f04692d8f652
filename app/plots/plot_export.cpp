#include "app/plots/plot_export.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>
#include <cmath>

#include "app/plots/chart_canvas.h"
#include "app/plots/format.h"
#include "app/plots/plot_view.h"
#include "app/plots/text.h"

/// Plots as pictures: title, plot, and a caption in small type. Sizes are in pixels of 1/96 inch,
/// so that letters have the same size on paper whatever the picture's.
namespace gazewright {
namespace {

constexpr double kTitleHeight = 24, kEdge = 6;
constexpr double kPixelsPerMm = 96 / 25.4;
constexpr double kPointsPerPixel = 0.75;
constexpr int kSmallest_px = 10;  // 7.5 points

struct Sheet {
  QSizeF size;
  QFont font, small;
  double caption_height = 0;
};

QFont with_pixels(QFont font, int pixels) {
  font.setPixelSize(std::max(kSmallest_px, pixels));
  return font;
}

/// What, and where it is known of which axes and variant.
QString title_of(const PlotView& plot, const PictureOptions& options) {
  return options.subject.isEmpty() ? plot.title()
                                   : Plots::tr("%1: %2").arg(plot.title(), options.subject);
}

/// With what its curves are less of, which no picture may leave unsaid.
QString caption_of(const PlotView& plot, const PictureOptions& options) {
  if (plot.shownLess().isEmpty()) return options.caption;
  QStringList parts{Plots::tr("present design less the variant “%1”").arg(plot.shownLess()),
                    options.caption};
  parts.removeAll(QString());
  return parts.join(QStringLiteral(" · "));
}

/// Title, plot and caption of an asked size, or around the plot as it is on the screen.
Sheet sheet_of(const PlotView& plot, const PictureOptions& options) {
  Sheet sheet;
  sheet.font = pixel_font(plot.font());
  sheet.small = with_pixels(sheet.font, sheet.font.pixelSize() * 4 / 5);
  sheet.font = with_pixels(sheet.font, sheet.font.pixelSize());
  const bool asked = options.width_mm > 0 && options.height_mm > 0;
  const QSizeF screen = QSizeF(plot.size().expandedTo({480, 280}));
  sheet.size = asked ? QSizeF(options.width_mm, options.height_mm) * kPixelsPerMm : screen;
  if (const QString caption = caption_of(plot, options); !caption.isEmpty()) {
    const QRectF room(0, 0, sheet.size.width() - 2 * kEdge, 1000);
    sheet.caption_height =
        QFontMetricsF(sheet.small).boundingRect(room, Qt::TextWordWrap, caption).height() + kEdge;
  }
  if (!asked) sheet.size.rheight() += kTitleHeight + sheet.caption_height;
  return sheet;
}

void paint_sheet(QPainter& painter, const PlotView& plot, const Sheet& sheet,
                 const PictureOptions& options) {
  Theme theme = theme_for(ThemeKind::print);
  if (options.transparent) theme.card.setAlpha(0);
  const QRectF page({0, 0}, sheet.size);
  painter.fillRect(page, theme.card);
  painter.save();
  QFont bold = sheet.font;
  bold.setBold(true);
  painter.setFont(bold);
  painter.setPen(theme.text);
  painter.drawText(QRectF(kEdge, 4, page.width() - 2 * kEdge, kTitleHeight - 4),
                   Qt::AlignLeft | Qt::AlignVCenter, title_of(plot, options));
  painter.setFont(sheet.small);
  painter.setPen(theme.quiet);
  painter.drawText(QRectF(kEdge, page.bottom() - sheet.caption_height, page.width() - 2 * kEdge,
                          sheet.caption_height),
                   int(Qt::AlignLeft) | int(Qt::AlignTop) | int(Qt::TextWordWrap),
                   caption_of(plot, options));
  painter.restore();
  painter.setFont(sheet.font);
  plot.paintTo(painter, page.adjusted(0, kTitleHeight, 0, -sheet.caption_height), theme);
}

QByteArray png_of(const PlotView& plot, const PictureOptions& options) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  plot.image(options).save(&buffer, "PNG");
  return bytes;
}

QByteArray pdf_of(const PlotView& plot, const PictureOptions& options) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  const Sheet sheet = sheet_of(plot, options);
  writer.setTitle(title_of(plot, options));
  writer.setPageSize(
      QPageSize(sheet.size * kPointsPerPixel, QPageSize::Point, {}, QPageSize::ExactMatch));
  writer.setPageMargins({0, 0, 0, 0});
  QPainter painter(&writer);
  const double scale = writer.width() / sheet.size.width();
  painter.scale(scale, scale);
  paint_sheet(painter, plot, sheet, options);
  painter.end();
  return buffer.data();
}

}  // namespace

QString picture_caption(const Rig& rig, const QString& variant, const QDate& day) {
  QStringList parts{QString::fromStdString(rig.title), variant};
  QStringList conditions;
  const double volts = rig.supply.voltage_V.value();
  if (std::isfinite(volts)) conditions << format_value(volts, "V", "V");
  for (const Axis axis : kAxes) {
    const double ratio = rig.axis(axis).gearbox.ratio.value();
    if (std::isfinite(ratio))
      conditions
          << Plots::tr("%1 ratio %2").arg(mid_sentence(axis_word(axis)), number_text(ratio, 4));
  }
  for (const Axis axis : kAxes) {
    const double limit_A = rig.axis(axis).drive.current_limit_A.value();
    if (std::isfinite(limit_A))
      conditions << Plots::tr("%1 drive limit %2")
                        .arg(mid_sentence(axis_word(axis)), format_value(limit_A, "A", "A"));
  }
  parts << conditions.join(QStringLiteral(", ")) << day.toString(Qt::ISODate);
  parts.removeAll(QString());
  return parts.join(QStringLiteral(" · "));
}

QString picture_subject(const QString& variant) {
  const QString axes = Plots::tr("pan and tilt");
  return variant.isEmpty() ? axes : QStringLiteral("%1, %2").arg(axes, variant);
}

QImage PlotView::image(double scale) const { return image(PictureOptions{.dpi = 96 * scale}); }

QImage PlotView::image(const PictureOptions& options) const {
  const Sheet sheet = sheet_of(*this, options);
  const double scale = options.dpi / 96;
  QImage image(QSize(int(std::lround(sheet.size.width() * scale)),
                     int(std::lround(sheet.size.height() * scale))),
               options.transparent ? QImage::Format_ARGB32_Premultiplied : QImage::Format_RGB32);
  image.fill(options.transparent ? Qt::transparent : Qt::white);
  image.setDevicePixelRatio(scale);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  paint_sheet(painter, *this, sheet, options);
  painter.end();
  image.setDotsPerMeterX(int(std::lround(options.dpi / 0.0254)));
  image.setDotsPerMeterY(int(std::lround(options.dpi / 0.0254)));
  return image;
}

QByteArray PlotView::svg(const PictureOptions& options) const {
  QBuffer buffer;
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setTitle(title_of(*this, options));
  generator.setDescription(caption_of(*this, options));
  generator.setResolution(96);
  const Sheet sheet = sheet_of(*this, options);
  generator.setSize(sheet.size.toSize());
  generator.setViewBox(QRectF({0, 0}, sheet.size));
  QPainter painter(&generator);
  paint_sheet(painter, *this, sheet, options);
  painter.end();
  return buffer.data();
}

std::optional<Diagnostic> PlotView::exportTo(const std::filesystem::path& file,
                                             const PictureOptions& options) const {
  const QString ending = QString::fromStdString(file.extension().string()).toLower();
  QByteArray bytes;
  if (ending == QStringLiteral(".png")) bytes = png_of(*this, options);
  if (ending == QStringLiteral(".svg")) bytes = svg(options);
  if (ending == QStringLiteral(".pdf")) bytes = pdf_of(*this, options);
  if (ending == QStringLiteral(".csv")) bytes = csv().toUtf8();
  if (bytes.isEmpty()) {
    Diagnostic problem;
    problem.file = file.string();
    problem.problem = Plots::tr("a plot cannot be written as \"%1\"").arg(ending).toStdString();
    problem.fix = Plots::tr("end the name in .png, .svg, .pdf or .csv").toStdString();
    return problem;
  }
  return save_text(file, {bytes.constData(), std::size_t(bytes.size())});
}

}  // namespace gazewright
