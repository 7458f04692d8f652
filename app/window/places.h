#pragma once

#include <QString>
#include <QStringList>

namespace gazewright {

/// The sample rigs that came with the program: beside an installed program, else in the source
/// tree it was built from. Sorted by name; empty where there are none.
QStringList sample_files();
QString handbook_folder();  ///< empty: no handbook

/// What is remembered between two starts but is no setting (recent files, layout, journals):
/// gazewright in $XDG_STATE_HOME, where that is not set in ~/.local/state (XDG Base Directory
/// Specification 0.8). It need not exist yet.
QString state_folder();

}  // namespace gazewright
