#include "app/window/special_tiles.h"

#include <QPainter>

#include "app/window/fitted_line.h"
#include "app/window/ratio_scale.h"

namespace gazewright {

HeadlineTile::HeadlineTile(Axis axis, QWidget* parent)
    : Tile(axis, QStringLiteral("task"), parent) {
  setObjectName(QString::fromUtf8(name_of(axis)) + QStringLiteral(" headline"));
}

void HeadlineTile::setHeadline(const Headline& words) {
  if (words == words_) return;
  words_ = words;
  setAccessibleName(axis_word(axis_));
  const QString time = words.doubt.isEmpty() ? words.time : words.time + QChar(' ') + words.doubt;
  setAccessibleDescription(time + QStringLiteral(" ") + words.about + QStringLiteral(", ") +
                           words.gap);
  QString tip =
      tr("From the command until the picture stays within the settle band, and how far the "
         "backlash lets the picture rock. The task's card says what is wanted.");
  if (!words.doubt.isEmpty())
    tip.prepend(tr("%1, about 95 % sure; Ctrl+M lists what is worth measuring. ").arg(time));
  tip = QStringLiteral("<p>%1</p>").arg(tip.toHtmlEscaped());
  if (!words.limits.isEmpty())
    tip += QStringLiteral("<p>%1 %2</p>")
               .arg(words.limits.join(' ').toHtmlEscaped(),
                    tr("Ctrl+L lists what limits the moves.").toHtmlEscaped());
  setToolTip(tip);
  paintAgain();
}

QSize HeadlineTile::sizeHint() const {
  return {QFontMetrics(font()).horizontalAdvance(QStringLiteral("move and settle")) + 22,
          Tile::sizeHint().height() + 8};
}

void HeadlineTile::paintTile(QPainter& painter) {
  painter.setLayoutDirection(Qt::LeftToRight);
  if (hasFocus() || isChecked()) paintFrame(painter);
  QFont big = font();
  big.setPointSizeF(font().pointSizeF() * 1.4);
  big.setBold(true);
  QFont name = font();
  name.setBold(true);
  const QRect inside = rect().adjusted(10, 0, -4, 0);
  int y = (height() - QFontMetrics(name).height() - QFontMetrics(big).height() -
           2 * QFontMetrics(smallFont()).height()) /
          2;
  const auto line = [&](const QFont& face, const QColor& colour, const QString& text) {
    const int height = QFontMetrics(face).height();
    const FittedLine fitted = fitted_line(text, face, inside.width());
    painter.setFont(fitted.font);
    painter.setPen(colour);
    painter.drawText(QRect(inside.left(), y, inside.width(), height), Qt::AlignVCenter,
                     fitted.text);
    y += height;
  };
  line(name, axis_text_colour(theme_, axis_), axis_word(axis_));
  line(big, dimmed_ ? theme_.quiet : theme_.text, words_.time);
  line(smallFont(), theme_.quiet, words_.about);
  line(smallFont(), theme_.quiet, words_.gap);
}

GearboxTile::GearboxTile(Axis axis, const QString& part, QWidget* parent)
    : Tile(axis, part, parent), scale_(new RatioScale(axis, this)) {}

QSize GearboxTile::sizeHint() const {
  const int text =
      6 + QFontMetrics(smallFont()).lineSpacing() + QFontMetrics(figureFont()).lineSpacing();
  return {220, text + scale_->sizeHint().height() + 4};
}

void GearboxTile::resizeEvent(QResizeEvent*) {
  const int height = scale_->sizeHint().height();
  scale_->setGeometry(4, this->height() - height - 4, width() - 8, height);
}

void GearboxTile::paintTile(QPainter& painter) {
  const TileText whole = text_;
  text_.lines.clear();
  Tile::paintTile(painter);
  text_ = whole;
  painter.setFont(smallFont());
  painter.setPen(theme_.quiet);
  const QRect row(8, 6 + QFontMetrics(smallFont()).lineSpacing(), width() - 16,
                  QFontMetrics(figureFont()).lineSpacing());
  // Beside the ratio as much as fits: with large text the torque alone, or nothing.
  const int room = row.width() - QFontMetrics(figureFont()).horizontalAdvance(text_.figure) - 8;
  const QFontMetrics metrics(smallFont());
  QStringList lines = text_.lines;
  const auto joined = [&lines] { return lines.join(QStringLiteral(" · ")); };
  while (!lines.isEmpty() && metrics.horizontalAdvance(joined()) > room) lines.removeLast();
  painter.drawText(row, Qt::AlignRight | Qt::AlignVCenter, joined());
}

}  // namespace gazewright
