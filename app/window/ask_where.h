#pragma once

#include <QString>

class QWidget;

namespace gazewright {

/// "owl" and "-step.csv" of "owl.rig.yaml": a name for what is made of a rig.
QString export_name(const QString& rig_file, const QString& end);

/// Asks for a file to write; the dialog adds the ending and asks before it overwrites.
/// @param start  folder and name to begin with. @returns empty: cancelled
QString ask_where(QWidget* parent, const QString& title, const QString& start,
                  const QString& filter, const QString& ending);

}  // namespace gazewright
