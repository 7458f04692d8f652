#pragma once

#include <QStringList>

namespace gazewright {

/// The sample rigs that came with the program: beside an installed program, else in the source
/// tree it was built from. Sorted by name; empty where there are none.
QStringList sample_files();
QString handbook_folder();  ///< empty: no handbook

}  // namespace gazewright
