#include "app/window/fitted_line.h"

#include <QFontMetrics>
#include <QStringList>
#include <algorithm>
#include <optional>

namespace gazewright {
namespace {

// Parts of the font's size. Text of twice the size is below the usual one at the smallest.
constexpr double kStillLarge = 0.75, kSmallest = 0.45, kStep = 0.05;
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

/// The largest font down to a part of it in which the text fits; empty where none does.
std::optional<FittedLine> shrunk(const QString& text, const QFont& font, double least,
                                 int room_px) {
  QFont smaller = font;
  for (double part = 1; part > least - kStep / 2; part -= kStep) {
    smaller.setPointSizeF(font.pointSizeF() * part);
    if (QFontMetrics(smaller).horizontalAdvance(text) <= room_px) return FittedLine{text, smaller};
  }
  return std::nullopt;
}

}  // namespace

FittedLine fitted_line(const QString& text, const QFont& font, int room_px) {
  if (QFontMetrics(font).horizontalAdvance(text) <= room_px) return {text, font};  // nearly always
  const QString numbers = numbers_of(text);
  if (numbers.isEmpty())
    return {QFontMetrics(font).elidedText(text, Qt::ElideRight, room_px), font};
  if (const auto whole = shrunk(text, font, kStillLarge, room_px)) return *whole;
  return shrunk(numbers, font, kSmallest, room_px).value_or(FittedLine{kEllipsis, font});
}

}  // namespace gazewright
