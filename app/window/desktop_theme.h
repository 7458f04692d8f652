#pragma once

#include <QDBusVariant>
#include <QObject>

#include "app/plots/theme.h"

namespace gazewright {

/// Whether the desktop asks for light, dark or high contrast, and for less motion, told by its
/// settings portal (org.freedesktop.appearance) and followed while the program runs. Without a
/// portal the palette that the platform starts with decides, and motion is as usual.
class DesktopTheme : public QObject {
  Q_OBJECT
 public:
  explicit DesktopTheme(QObject* parent = nullptr);
  ThemeKind kind() const;
  bool isDark() const { return dark_; }
  bool wantsCalm() const { return calm_; }  ///< reduced motion: no animation anywhere

 signals:
  void changed();

 public:
  /// As the portal tells it: "color-scheme", "contrast" or "reduced-motion".
  void take(const QString& key, const QVariant& value);

 private slots:
  void settingChanged(const QString& group, const QString& key, const QDBusVariant& value);

 private:
  void ask(const QString& key);

  bool dark_ = false, contrast_ = false, calm_ = false;
};

}  // namespace gazewright
