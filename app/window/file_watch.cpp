#include "app/window/file_watch.h"

#include <QFileInfo>

namespace gazewright {

FileWatch::FileWatch(QObject* parent) : QObject(parent) {
  calm_.setSingleShot(true);
  calm_.setInterval(100);
  for (auto signal : {&QFileSystemWatcher::fileChanged, &QFileSystemWatcher::directoryChanged}) {
    connect(&watcher_, signal, &calm_, qOverload<>(&QTimer::start));
  }
  connect(&calm_, &QTimer::timeout, this, [this] {
    watch();
    emit touched();
  });
}

void FileWatch::setFile(const QString& file) {
  if (file == file_) return;
  const QStringList before = watcher_.files() + watcher_.directories();
  if (!before.isEmpty()) watcher_.removePaths(before);
  file_ = file;
  watch();
}

/// The file itself for writing in place, its folder for a replacement, which takes the file's own
/// watch away.
void FileWatch::watch() {
  if (file_.isEmpty()) return;
  for (const QString& path : {file_, QFileInfo(file_).absolutePath()}) {
    if (QFileInfo::exists(path)) watcher_.addPath(path);
  }
}

}  // namespace gazewright
