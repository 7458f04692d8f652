#include "app/window/path_import.h"

#include <QCoreApplication>
#include <QFile>
#include <variant>

#include "app/window/document.h"
#include "core/files/path_csv.h"
#include "core/files/text_check.h"

namespace gazewright {

QString import_path(Document& document, const QString& file) {
  QFile in(file);
  const bool opened = in.open(QIODevice::ReadOnly);
  const QByteArray text = in.read(kLargestFile_bytes + 1);  // one more, so that more is seen
  if (!opened || in.error() != QFileDevice::NoError) {
    return QCoreApplication::translate("PathImport", "%1 cannot be read: %2")
        .arg(file, in.errorString());
  }
  auto read = read_path_csv({text.constData(), std::size_t(text.size())}, file.toStdString());
  if (const auto* problem = std::get_if<Diagnostic>(&read)) {
    return QString::fromStdString(to_text(*problem));
  }
  document.edit(QCoreApplication::translate("PathImport", "import a path"),
                with_path(document.rig(), std::get<std::vector<PathPoint>>(read)));
  return {};
}

}  // namespace gazewright
