#pragma once

#include <QFileSystemWatcher>
#include <QObject>
#include <QString>
#include <QTimer>

namespace gazewright {

/// Tells when somebody wrote, replaced, removed or brought back a file. Several changes within a
/// tenth of a second are one; it may tell without cause.
class FileWatch : public QObject {
  Q_OBJECT
 public:
  explicit FileWatch(QObject* parent = nullptr);

  void setFile(const QString& file);  ///< empty: none

 signals:
  void touched();

 private:
  void watch();

  QString file_;
  QFileSystemWatcher watcher_;
  QTimer calm_;
};

}  // namespace gazewright
