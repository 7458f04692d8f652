#include "app/window/ask_where.h"

#include <QFileDialog>
#include <QFileInfo>

namespace gazewright {

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
