#include "app/plots/plot_view.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>

#include "app/plots/chart_canvas.h"
#include "app/plots/text.h"

namespace gazewright {
namespace {

constexpr double kTitleHeight = 24;

/// Title, then the plot, as exported.
void paint_titled(QPainter& painter, const PlotView& plot, QSizeF size) {
  const Theme theme = theme_for(ThemeKind::print);
  painter.fillRect(QRectF({0, 0}, size), theme.card);
  QFont font = pixel_font(plot.font());
  painter.setFont(font);
  painter.save();
  font.setBold(true);
  painter.setFont(font);
  painter.setPen(theme.text);
  painter.drawText(QRectF(6, 4, size.width() - 12, kTitleHeight - 4),
                   Qt::AlignLeft | Qt::AlignVCenter, plot.title());
  painter.restore();
  plot.paintTo(painter, {0, kTitleHeight, size.width(), size.height() - kTitleHeight}, theme);
}

QSizeF picture_size(const PlotView& plot) {
  return QSizeF(plot.size().expandedTo({480, 280})) + QSizeF(0, kTitleHeight);
}

QByteArray png_of(const PlotView& plot) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  plot.image().save(&buffer, "PNG");
  return bytes;
}

QByteArray svg_of(const PlotView& plot) {
  QBuffer buffer;
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setTitle(plot.title());
  generator.setResolution(96);
  const QSizeF size = picture_size(plot);
  generator.setSize(size.toSize());
  generator.setViewBox(QRectF({0, 0}, size));
  QPainter painter(&generator);
  paint_titled(painter, plot, size);
  painter.end();
  return buffer.data();
}

QByteArray pdf_of(const PlotView& plot) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  const QSizeF size = picture_size(plot);
  constexpr double kPointsPerPixel = 0.75;
  writer.setTitle(plot.title());
  writer.setPageSize(
      QPageSize(size * kPointsPerPixel, QPageSize::Point, {}, QPageSize::ExactMatch));
  writer.setPageMargins({0, 0, 0, 0});
  QPainter painter(&writer);
  const double scale = writer.width() / size.width();
  painter.scale(scale, scale);
  paint_titled(painter, plot, size);
  painter.end();
  return buffer.data();
}

}  // namespace

QImage PlotView::image(double scale) const {
  const QSizeF size = picture_size(*this);
  QImage image((size * scale).toSize(), QImage::Format_RGB32);
  image.setDevicePixelRatio(scale);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  paint_titled(painter, *this, size);
  return image;
}

std::optional<Diagnostic> PlotView::exportTo(const std::filesystem::path& file) const {
  const QString ending = QString::fromStdString(file.extension().string()).toLower();
  QByteArray bytes;
  if (ending == QStringLiteral(".png")) bytes = png_of(*this);
  if (ending == QStringLiteral(".svg")) bytes = svg_of(*this);
  if (ending == QStringLiteral(".pdf")) bytes = pdf_of(*this);
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
