#include "app/window/ask_where.h"

#include <QFileDialog>
#include <QFileInfo>

namespace gazewright {

QString export_name(const QString& rig_file, const QString& end) {
  QString name = rig_file;
  for (const char* ending : {".yaml", ".yml", ".rig"}) {
    if (name.endsWith(QLatin1String(ending))) name.chop(qsizetype(qstrlen(ending)));
  }
  return name + end;
}

QString ask_where(QWidget* parent, const QString& title, const QString& start,
                  const QString& filter, const QString& ending) {
  const QFileInfo place(start);
  QFileDialog dialog(parent, title, place.absolutePath(), filter);
  dialog.setAcceptMode(QFileDialog::AcceptSave);
  dialog.setDefaultSuffix(ending);
  dialog.selectFile(place.fileName());
  return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().value(0) : QString();
}

}  // namespace gazewright
