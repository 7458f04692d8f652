#pragma once

#include <QDBusVariant>
#include <QObject>

#include "app/plots/theme.h"

namespace gazewright {

/// Whether the desktop asks for light, dark or high contrast, and for less motion, told by its
/// settings portal (org.freedesktop.appearance) and followed while the program runs. Without a
/// portal the palette that the platform starts with decides.
class DesktopTheme : public QObject {
  Q_OBJECT
 public:
  explicit DesktopTheme(QObject* parent = nullptr);
  ThemeKind kind() const;
  bool wantsStillness() const { return still_; }

 signals:
  void changed();

 private slots:
  void settingChanged(const QString& group, const QString& key, const QDBusVariant& value);

 private:
  void ask(const QString& key);
  void take(const QString& key, const QVariant& value);

  bool dark_ = false, contrast_ = false, still_ = false;
};

}  // namespace gazewright
