#pragma once

#include <QString>

class QWidget;

namespace gazewright {

/// Asks for a file to write; the dialog adds the ending and asks before it overwrites.
/// @param start  folder and name to begin with. @returns empty: cancelled
QString ask_where(QWidget* parent, const QString& title, const QString& start,
                  const QString& filter, const QString& ending);

}  // namespace gazewright
