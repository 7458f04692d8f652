#include "app/window/settings.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <algorithm>
#include <cstdlib>

#include "app/window/language.h"
#include "app/window/places.h"

namespace gazewright {
namespace {

constexpr int kRecentFiles = 10;

/// A setting that is a word: its key, where it is kept, and the words allowed.
struct WordSetting {
  const char* key;
  QString Preferences::*at;
  QStringList allowed;
};
const std::array<WordSetting, 4>& word_settings() {
  static const std::array<WordSetting, 4> table{
      {{"theme", &Preferences::theme, {"desktop", "light", "dark", "contrast"}},
       {"language", &Preferences::language, languages()},
       {"paper", &Preferences::paper, {"region", "a4", "letter"}},
       {"start", &Preferences::start, {"sample", "last", "new"}}}};
  return table;
}

QString usual_file() {
  return QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) +
         QStringLiteral("/gazewright/gazewright.ini");
}

}  // namespace

int nearest_text_size(int percent) {
  const auto off = [percent](int size) { return std::abs(size - percent); };
  return *std::ranges::min_element(kTextSizes, {}, off);
}

Settings::Settings(const QString& file)
    : state_folder_(file.isEmpty() ? state_folder()
                                   : QFileInfo(file).absolutePath() + QStringLiteral("/state")),
      store_(file.isEmpty() ? usual_file() : file, QSettings::IniFormat),
      state_(state_folder_ + QStringLiteral("/window.ini"), QSettings::IniFormat) {
  carryOver();
}

/// Recent files and layout were kept among the settings once. They move, unless the state folder
/// has newer ones; the settings let go of them when they are safely there.
void Settings::carryOver() {
  QStringList moved;
  for (const QString& key : store_.allKeys()) {
    if (key != QStringLiteral("recent") && !key.startsWith(QStringLiteral("layout/"))) continue;
    if (!state_.contains(key)) state_.setValue(key, store_.value(key));
    moved << key;
  }
  if (moved.isEmpty()) return;
  state_.sync();
  if (state_.status() != QSettings::NoError) return;
  for (const QString& key : moved) store_.remove(key);
}

QStringList Settings::recentFiles() const {
  return state_.value(QStringLiteral("recent")).toStringList();
}

void Settings::addRecentFile(const QString& file) {
  QStringList files = recentFiles();
  const QString whole = QFileInfo(file).absoluteFilePath();
  files.removeAll(whole);
  files.prepend(whole);
  setRecentFiles(files);
}

void Settings::setRecentFiles(const QStringList& files) {
  if (files.isEmpty()) return state_.remove(QStringLiteral("recent"));
  state_.setValue(QStringLiteral("recent"), QStringList(files.mid(0, kRecentFiles)));
}

Preferences Settings::preferences() const {
  Preferences read;
  for (const WordSetting& setting : word_settings()) {
    const QString word = store_.value(QLatin1String(setting.key)).toString();
    if (setting.allowed.contains(word)) read.*setting.at = word;
  }
  const int percent = store_.value(QStringLiteral("text_percent"), read.text_percent).toInt();
  if (percent > 0) read.text_percent = nearest_text_size(percent);
  read.calm = store_.value(QStringLiteral("reduced_motion"), read.calm).toBool();
  return read;
}

void Settings::setPreferences(const Preferences& preferences) {
  const Preferences usual;
  const auto keep = [this](const QString& key, const QVariant& value, const QVariant& by_default) {
    if (value == by_default) {
      store_.remove(key);
    } else {
      store_.setValue(key, value);
    }
  };
  for (const WordSetting& setting : word_settings())
    keep(QLatin1String(setting.key), preferences.*setting.at, usual.*setting.at);
  keep(QStringLiteral("text_percent"), preferences.text_percent, usual.text_percent);
  keep(QStringLiteral("reduced_motion"), preferences.calm, usual.calm);
}

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
