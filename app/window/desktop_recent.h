#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QString>

namespace gazewright {

/// The desktop's list of recently used files with this file in it, once; the other entries stay. An
/// empty list makes a new one; one that is not XML comes back as it is. Source: freedesktop.org,
/// Desktop Bookmark Specification 0.9 and Recent File Storage Specification 0.2 (from memory).
QByteArray with_recent(const QByteArray& list, const QString& file, const QDateTime& now);

/// Puts the file into the desktop's list, on another thread.
void tell_desktop_of(const QString& file);

}  // namespace gazewright
