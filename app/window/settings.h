#pragma once

#include <QSettings>
#include <QStringList>
#include <array>

namespace gazewright {

/// What the settings window sets. An entry has its default until it is set otherwise.
struct Preferences {
  QString theme = QStringLiteral("desktop");     ///< or "light", "dark", "contrast"
  int text_percent = 100;                        ///< of the desktop's font size; one of kTextSizes
  bool calm = false;                             ///< no animation even where the desktop wants it
  QString language = QStringLiteral("desktop");  ///< from the next start on; or "en", "de"
  QString paper = QStringLiteral("region");      ///< of the sheet; or "a4", "letter"
  QString start = QStringLiteral("sample");      ///< what opens; or "last", "new"
  bool operator==(const Preferences&) const = default;
};
inline constexpr std::array kTextSizes{80, 90, 100, 110, 125, 150, 175, 200};
/// The one of kTextSizes that is nearest.
int nearest_text_size(int percent);

/// What the window remembers between two starts: settings in the XDG configuration folder; recent
/// files and layout in the state folder. A test names the first file, and gets a state folder
/// beside it.
class Settings {
 public:
  explicit Settings(const QString& file = {});

  QStringList recentFiles() const;
  void addRecentFile(const QString& file);
  void setRecentFiles(const QStringList& files);
  /// Entries that are none of those allowed count as not set.
  Preferences preferences() const;
  void setPreferences(const Preferences& preferences);
  QByteArray bytes(const QString& key) const;  ///< geometry and splitters
  void setBytes(const QString& key, const QByteArray& bytes);
  QStringList plots() const;
  void setPlots(const QStringList& keys);
  QString lastFolder() const;
  /// Where something was exported to last; `otherwise` where nothing was, or its folder is gone.
  QString exportFolder(const QString& otherwise) const;
  void setExportFolder(const QString& folder);
  bool wantsGuide() const;  ///< the first steps were not put away
  void setWantsGuide(bool wanted);
  void forgetLayout();
  const QString& stateFolder() const { return state_folder_; }

 private:
  void carryOver();

  QString state_folder_;
  mutable QSettings store_, state_;
};

}  // namespace gazewright
