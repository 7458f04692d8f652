#pragma once

#include <QString>
#include <vector>

#include "core/files/rig_file.h"

/// The folder of the user's own data files: values of the trade that are not built in.
namespace gazewright {

class MessageBar;

/// Puts the files of the folder in force and returns what is wrong with them. Before the first
/// window opens.
std::vector<Diagnostic> take_own_data(const QString& folder);
/// Says what is wrong with them, under whatever the bar says already.
void tell_own_data(MessageBar& messages, const std::vector<Diagnostic>& faults);

/// Makes the folder of the parts shelf where there is none, and shows it.
void open_shelf_folder(const QString& folder, MessageBar& messages);
/// Makes the folder with an example in it where there is none, and shows it in the desktop's file
/// manager. The bar says what to do next, or why it cannot be made.
void open_data_folder(const QString& folder, MessageBar& messages);

}  // namespace gazewright
