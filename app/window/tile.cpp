#include "app/window/tile.h"

#include <QPainter>

#include "app/plots/text.h"
#include "app/window/fitted_line.h"

namespace gazewright {
namespace {
constexpr int kPadding = 8, kRadius = 6;
}

Tile::Tile(Axis axis, const QString& part, QWidget* parent)
    : QAbstractButton(parent), axis_(axis), theme_(theme_for(ThemeKind::light)), part_(part) {
  setObjectName(part + QStringLiteral(" tile"));
  setCheckable(true);
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void Tile::setTileText(const TileText& text) {
  if (text == text_) return;
  text_ = text;
  setAccessibleName(axis_word(axis_) + QStringLiteral(" ") + mid_sentence(text.title));
  QStringList all{text.figure};
  all += text.lines;
  if (text.worst) all << verdict_word(*text.worst);
  setAccessibleDescription(all.join(QStringLiteral(", ")));
  setToolTip(text.tip);
  paintAgain();
}

void Tile::setTheme(const Theme& theme) {
  theme_ = theme;
  paintAgain();
}

void Tile::setDimmed(bool dimmed) {
  if (dimmed == dimmed_) return;
  dimmed_ = dimmed;
  paintAgain();
}

QFont Tile::smallFont() const {
  QFont small = font();
  small.setPointSizeF(font().pointSizeF() * 0.92);
  return small;
}

QFont Tile::figureFont() const {
  QFont bold = font();
  bold.setPointSizeF(font().pointSizeF() * 1.15);
  bold.setBold(true);
  return bold;
}

QSize Tile::sizeHint() const {
  const int small = QFontMetrics(smallFont()).lineSpacing();
  return {120, 2 * kPadding - 4 + 3 * small + QFontMetrics(figureFont()).lineSpacing()};
}

void Tile::paintFrame(QPainter& painter) {
  painter.setRenderHint(QPainter::Antialiasing);
  const QColor accent = axis_colour(theme_, axis_);
  const QRectF frame = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
  painter.setBrush(isChecked() ? blended(accent, theme_.card, 0.08) : theme_.card);
  painter.setPen(isChecked() ? QPen(accent, 2) : QPen(theme_.border, 1));
  painter.drawRoundedRect(frame, kRadius, kRadius);
  if (hasFocus()) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme_.focus, 2));
    painter.drawRoundedRect(frame.adjusted(2.5, 2.5, -2.5, -2.5), kRadius - 2, kRadius - 2);
  }
}

void Tile::paintAgain() {
  picture_.forget();
  update();
}

void Tile::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  if (isChecked() || hasFocus()) {
    painter.setFont(font());
    return paintTile(painter);
  }
  // The outermost columns stay the drive line's: its shaft ends there.
  const QPixmap& picture =
      picture_.of(*this, theme_.card, [this](QPainter& kept) { paintTile(kept); });
  painter.setClipRect(rect().adjusted(1, 0, -1, 0));
  painter.drawPixmap(0, 0, picture);
}

void Tile::paintTile(QPainter& painter) {
  painter.setLayoutDirection(Qt::LeftToRight);  // a number stands before its unit
  paintFrame(painter);
  const QRect inside = rect().adjusted(kPadding, kPadding - 3, -kPadding, -kPadding + 3);
  const auto line = [&](int y, const QFont& font, const QColor& colour, const QString& text) {
    const int height = QFontMetrics(font).lineSpacing();
    const FittedLine fitted = fitted_line(text, font, inside.width());
    painter.setFont(fitted.font);
    painter.setPen(colour);
    painter.drawText(QRect(inside.left(), y, inside.width(), height), Qt::AlignVCenter,
                     fitted.text);
    return y + height;
  };
  if (text_.worst && *text_.worst != Verdict::holds) {
    painter.setFont(font());
    painter.setPen(verdict_colour(theme_, *text_.worst));
    painter.drawText(inside, Qt::AlignRight | Qt::AlignTop, verdict_symbol(*text_.worst));
  }
  int y = line(inside.top(), smallFont(), theme_.quiet, text_.title);
  y = line(y, figureFont(), dimmed_ ? theme_.quiet : theme_.text, text_.figure);
  for (const QString& text : text_.lines) y = line(y, smallFont(), theme_.quiet, text);
}

}  // namespace gazewright
