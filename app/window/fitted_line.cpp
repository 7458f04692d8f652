#include "app/window/fitted_line.h"

#include <QFontMetrics>
#include <QStringList>
#include <algorithm>

namespace gazewright {
namespace {

constexpr double kSmallest = 0.45;  // of the font: text of twice the size is below the usual one
const QString kEllipsis = QStringLiteral("…");

bool has_digit(const QString& word) {
  return std::ranges::any_of(word, [](QChar c) { return c.isDigit(); });
}

/// From the first number to the last one; a unit hangs on its number by a narrow space.
QString numbers_of(const QString& text) {
  const QStringList words = text.split(' ');
  const auto first = std::ranges::find_if(words, has_digit);
  if (first == words.end()) return {};
  const auto last = std::find_if(words.rbegin(), words.rend(), has_digit).base();
  QStringList kept(first, last);
  if (first != words.begin()) kept.prepend(kEllipsis);
  if (last != words.end()) kept.append(kEllipsis);
  return kept.join(' ');
}

bool fits(const QString& text, const QFont& font, int room_px) {
  return QFontMetrics(font).horizontalAdvance(text) <= room_px;
}

}  // namespace

FittedLine fitted_line(const QString& text, const QFont& font, int room_px) {
  if (fits(text, font, room_px)) return {text, font};
  const QString numbers = numbers_of(text);
  if (numbers.isEmpty())
    return {QFontMetrics(font).elidedText(text, Qt::ElideRight, room_px), font};
  QFont smaller = font;
  for (double part = 1; part >= kSmallest; part -= 0.05) {
    smaller.setPointSizeF(font.pointSizeF() * part);
    if (fits(numbers, smaller, room_px)) return {numbers, smaller};
  }
  return {kEllipsis, font};
}

}  // namespace gazewright
