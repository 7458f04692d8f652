#pragma once

#include <QFont>
#include <QString>

namespace gazewright {

struct FittedLine {
  QString text;
  QFont font;
};

/// A line for a narrow place in which no number is cut, for the rest of one reads as another
/// number: the letters get a little smaller first, then words before and after the numbers give
/// way, then the letters get smaller still. What does not fit even so is an ellipsis alone. A line
/// without numbers ends in an ellipsis.
FittedLine fitted_line(const QString& text, const QFont& font, int room_px);

}  // namespace gazewright
