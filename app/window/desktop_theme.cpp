#include "app/window/desktop_theme.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDBusVariant>
#include <QGuiApplication>
#include <QPalette>

namespace gazewright {
namespace {

const QString kService = QStringLiteral("org.freedesktop.portal.Desktop");
const QString kPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString kSettings = QStringLiteral("org.freedesktop.portal.Settings");
const QString kGroup = QStringLiteral("org.freedesktop.appearance");
const QString kScheme = QStringLiteral("color-scheme");
const QString kContrast = QStringLiteral("contrast");
const QString kMotion = QStringLiteral("reduced-motion");

}  // namespace

DesktopTheme::DesktopTheme(QObject* parent) : QObject(parent) {
  dark_ = QGuiApplication::palette().color(QPalette::Window).lightness() < 128;
  if (!qEnvironmentVariableIsSet("DBUS_SESSION_BUS_ADDRESS")) return;
  QDBusConnection bus = QDBusConnection::sessionBus();
  if (!bus.isConnected()) return;
  bus.connect(kService, kPath, kSettings, QStringLiteral("SettingChanged"), this,
              SLOT(settingChanged(QString, QString, QDBusVariant)));
  ask(kScheme);
  ask(kContrast);
  ask(kMotion);
}

ThemeKind DesktopTheme::kind() const {
  if (contrast_) return ThemeKind::high_contrast;
  return dark_ ? ThemeKind::dark : ThemeKind::light;
}

void DesktopTheme::ask(const QString& key) {
  QDBusMessage call =
      QDBusMessage::createMethodCall(kService, kPath, kSettings, QStringLiteral("Read"));
  call << kGroup << key;
  auto* watcher = new QDBusPendingCallWatcher(QDBusConnection::sessionBus().asyncCall(call), this);
  connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, key, watcher] {
    const QDBusPendingReply<QDBusVariant> reply = *watcher;
    if (!reply.isError()) take(key, reply.value().variant());
    watcher->deleteLater();
  });
}

void DesktopTheme::settingChanged(const QString& group, const QString& key,
                                  const QDBusVariant& value) {
  if (group == kGroup) take(key, value.variant());
}

void DesktopTheme::take(const QString& key, const QVariant& value) {
  QVariant inner = value;
  if (inner.canConvert<QDBusVariant>()) inner = inner.value<QDBusVariant>().variant();
  const ThemeKind before = kind();
  if (key == kScheme && inner.toUInt() != 0) dark_ = inner.toUInt() == 1;
  if (key == kContrast) contrast_ = inner.toUInt() == 1;
  const bool calm = calm_;
  if (key == kMotion) calm_ = inner.toUInt() == 1;
  if (kind() != before || calm != calm_) emit changed();
}

}  // namespace gazewright
