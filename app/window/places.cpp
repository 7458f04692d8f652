#include "app/window/places.h"

#include <QCoreApplication>
#include <QDir>
#include <QStandardPaths>
#include <algorithm>

#ifndef GAZEWRIGHT_SAMPLE_DIR
#define GAZEWRIGHT_SAMPLE_DIR ""
#endif
#ifndef GAZEWRIGHT_HANDBOOK_DIR
#define GAZEWRIGHT_HANDBOOK_DIR ""
#endif

namespace gazewright {
namespace {

/// Opened at the first start: a small rig with a fast eye, as most are.
constexpr char kFirstSample[] = "quick-newt.rig.yaml";

/// The first of both folders that is there.
QString folder(const char* installed, const char* source) {
  const QDir beside(QCoreApplication::applicationDirPath() +
                    QStringLiteral("/../share/gazewright/") + QLatin1String(installed));
  if (beside.exists()) return beside.absolutePath();
  const QString path = QString::fromUtf8(source);
  return !path.isEmpty() && QDir(path).exists() ? path : QString();
}

}  // namespace

QStringList sample_files() {
  const QString path = folder("sample-rigs", GAZEWRIGHT_SAMPLE_DIR);
  if (path.isEmpty()) return {};
  QStringList files;
  for (const QFileInfo& entry :
       QDir(path).entryInfoList({QStringLiteral("*.rig.yaml")}, QDir::Files, QDir::Name)) {
    files << entry.absoluteFilePath();
  }
  std::stable_partition(files.begin(), files.end(), [](const QString& file) {
    return QFileInfo(file).fileName() == QLatin1String(kFirstSample);
  });
  return files;
}

QString handbook_folder() { return folder("handbook", GAZEWRIGHT_HANDBOOK_DIR); }

QString state_folder() {
  QString home = qEnvironmentVariable("XDG_STATE_HOME");
  // The specification ignores relative paths.
  if (!QDir::isAbsolutePath(home)) home = QDir::homePath() + QStringLiteral("/.local/state");
  if (QStandardPaths::isTestModeEnabled())
    home = QDir::homePath() + QStringLiteral("/.qttest/state");
  return home + QStringLiteral("/gazewright");
}

}  // namespace gazewright
