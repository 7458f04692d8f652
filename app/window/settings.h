#pragma once

#include <QSettings>
#include <QStringList>

namespace gazewright {

/// What the window remembers between two starts. One file in the XDG configuration folder, or the
/// one a test names.
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
  bool wantsGuide() const;  ///< the first steps were not put away
  void setWantsGuide(bool wanted);
  void forgetLayout();

 private:
  mutable QSettings store_;
};

}  // namespace gazewright
