#pragma once

#include <QString>

namespace gazewright {

class Document;

/// Takes the target's path from a CSV file, as one step. Returns what is wrong with it, else
/// nothing.
QString import_path(Document& document, const QString& file);

}  // namespace gazewright
