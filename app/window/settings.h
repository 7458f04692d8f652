#pragma once

#include <QSettings>
#include <QStringList>

namespace gazewright {

/// What the window remembers between two starts: settings in the XDG configuration folder; recent
/// files and layout in the state folder. A test names the first file, and gets a state folder
/// beside it.
class Settings {
 public:
  explicit Settings(const QString& file = {});

  QStringList recentFiles() const;
  void addRecentFile(const QString& file);
  void clearRecentFiles();
  QString theme() const;  ///< "desktop", "light", "dark", "contrast"
  void setTheme(const QString& theme);
  QByteArray bytes(const QString& key) const;  ///< geometry and splitters
  void setBytes(const QString& key, const QByteArray& bytes);
  QStringList plots() const;
  void setPlots(const QStringList& keys);
  QString lastFolder() const;
  /// Where a sheet was written last; `otherwise` where none was, or its folder is gone.
  QString exportFolder(const QString& otherwise) const;
  void setExportFolder(const QString& folder);
  bool wantsGuide() const;  ///< the first steps were not put away
  void setWantsGuide(bool wanted);
  void forgetLayout();
  const QString& stateFolder() const { return state_folder_; }

 private:
  QString state_folder_;
  mutable QSettings store_, state_;
};

}  // namespace gazewright
