#include "app/window/settings.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

#include "app/window/places.h"

namespace gazewright {
namespace {

constexpr int kRecentFiles = 10;

QString usual_file() {
  return QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) +
         QStringLiteral("/gazewright/gazewright.ini");
}

}  // namespace

Settings::Settings(const QString& file)
    : state_folder_(file.isEmpty() ? state_folder()
                                   : QFileInfo(file).absolutePath() + QStringLiteral("/state")),
      store_(file.isEmpty() ? usual_file() : file, QSettings::IniFormat),
      state_(state_folder_ + QStringLiteral("/window.ini"), QSettings::IniFormat) {}

QStringList Settings::recentFiles() const {
  return state_.value(QStringLiteral("recent")).toStringList();
}

void Settings::addRecentFile(const QString& file) {
  QStringList files = recentFiles();
  const QString whole = QFileInfo(file).absoluteFilePath();
  files.removeAll(whole);
  files.prepend(whole);
  state_.setValue(QStringLiteral("recent"), QStringList(files.mid(0, kRecentFiles)));
}

void Settings::clearRecentFiles() { state_.remove(QStringLiteral("recent")); }

QString Settings::theme() const {
  return store_.value(QStringLiteral("theme"), QStringLiteral("desktop")).toString();
}
void Settings::setTheme(const QString& theme) { store_.setValue(QStringLiteral("theme"), theme); }

QByteArray Settings::bytes(const QString& key) const {
  return state_.value(QStringLiteral("layout/") + key).toByteArray();
}
void Settings::setBytes(const QString& key, const QByteArray& bytes) {
  state_.setValue(QStringLiteral("layout/") + key, bytes);
}

QStringList Settings::plots() const {
  return state_.value(QStringLiteral("layout/plots")).toStringList();
}
void Settings::setPlots(const QStringList& keys) {
  state_.setValue(QStringLiteral("layout/plots"), keys);
}

QString Settings::lastFolder() const {
  const QStringList files = recentFiles();
  return files.isEmpty() ? QDir::homePath() : QFileInfo(files.front()).absolutePath();
}

QString Settings::exportFolder(const QString& otherwise) const {
  const QString folder = state_.value(QStringLiteral("exports")).toString();
  return !folder.isEmpty() && QFileInfo(folder).isDir() ? folder : otherwise;
}
void Settings::setExportFolder(const QString& folder) {
  state_.setValue(QStringLiteral("exports"), folder);
}

bool Settings::wantsGuide() const {
  return store_.value(QStringLiteral("first_steps"), true).toBool();
}
void Settings::setWantsGuide(bool wanted) {
  store_.setValue(QStringLiteral("first_steps"), wanted);
}

void Settings::forgetLayout() { state_.remove(QStringLiteral("layout")); }

}  // namespace gazewright
