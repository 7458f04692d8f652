#pragma once

#include <QPainter>

#include "app/plots/theme.h"

/// Shared by the plots that have no axes.
namespace gazewright {

inline void paint_message(QPainter& painter, const QRectF& rect, const QString& message,
                          const Theme& theme) {
  painter.setPen(theme.quiet);
  painter.drawText(rect.adjusted(16, 8, -16, -8), int(Qt::AlignCenter) | int(Qt::TextWordWrap),
                   message);
}

inline QString csv_number(double value) { return QString::number(value, 'g', 17); }

}  // namespace gazewright
