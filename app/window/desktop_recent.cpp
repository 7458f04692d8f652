#include "app/window/desktop_recent.h"

#include <QDir>
#include <QFile>
#include <QSaveFile>
#include <QStandardPaths>
#include <QThreadPool>
#include <QUrl>
#include <QXmlStreamReader>
#include <QXmlStreamWriter>

namespace gazewright {
namespace {

constexpr qint64 kLargestList_bytes = 4'000'000;  // somebody else's file: no more is read

constexpr const char* kEmptyList =
    R"(<?xml version="1.0" encoding="UTF-8"?><xbel version="1.0"></xbel>)";

const QString kBookmark = QStringLiteral("http://www.freedesktop.org/standards/desktop-bookmarks");
const QString kMime = QStringLiteral("http://www.freedesktop.org/standards/shared-mime-info");

void write_entry(QXmlStreamWriter& out, const QString& href, const QString& since,
                 const QString& now) {
  out.writeStartElement(QStringLiteral("bookmark"));
  out.writeAttribute(QStringLiteral("href"), href);
  out.writeAttribute(QStringLiteral("added"), since);
  out.writeAttribute(QStringLiteral("modified"), now);
  out.writeAttribute(QStringLiteral("visited"), now);
  out.writeStartElement(QStringLiteral("info"));
  out.writeStartElement(QStringLiteral("metadata"));
  out.writeAttribute(QStringLiteral("owner"), QStringLiteral("http://freedesktop.org"));
  out.writeEmptyElement(kMime, QStringLiteral("mime-type"));
  out.writeAttribute(QStringLiteral("type"), QStringLiteral("application/x-gazewright-rig"));
  out.writeStartElement(kBookmark, QStringLiteral("applications"));
  out.writeEmptyElement(kBookmark, QStringLiteral("application"));
  out.writeAttribute(QStringLiteral("name"), QStringLiteral("Gazewright"));
  out.writeAttribute(QStringLiteral("exec"), QStringLiteral("'gazewright %f'"));
  out.writeAttribute(QStringLiteral("modified"), now);
  out.writeAttribute(QStringLiteral("count"), QStringLiteral("1"));
  for (int open = 0; open < 4; ++open) out.writeEndElement();
}

/// Copies the list but for the entry of `href`; returns when that was added, if it was there.
QString copy_others(QXmlStreamReader& in, QXmlStreamWriter& out, const QString& href) {
  QString since;
  while (!in.atEnd()) {
    in.readNext();
    const bool isBookmark = in.isStartElement() && in.name() == QLatin1String("bookmark");
    if (isBookmark && in.attributes().value(QLatin1String("href")) == href) {
      since = in.attributes().value(QLatin1String("added")).toString();
      in.skipCurrentElement();
    } else if (in.isEndElement() && in.name() == QLatin1String("xbel")) {
      break;
    } else if (in.tokenType() != QXmlStreamReader::Invalid) {
      out.writeCurrentToken(in);
    }
  }
  return since;
}

}  // namespace

QByteArray with_recent(const QByteArray& list, const QString& file, const QDateTime& now) {
  QXmlStreamReader in(list.isEmpty() ? QByteArray(kEmptyList) : list);
  QByteArray text;
  QXmlStreamWriter out(&text);
  const QString href = QString::fromLatin1(QUrl::fromLocalFile(file).toEncoded());
  const QString time = now.toUTC().toString(Qt::ISODate);
  const QString since = copy_others(in, out, href);
  if (in.hasError()) return list;
  write_entry(out, href, since.isEmpty() ? time : since, time);
  out.writeEndDocument();  // and the list's own end
  return text;
}

void tell_desktop_of(const QString& file) {
  QThreadPool::globalInstance()->start([file] {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation);
    const QString place = folder + QStringLiteral("/recently-used.xbel");
    QFile old(place);
    QByteArray list;
    if (old.exists()) {
      if (old.size() > kLargestList_bytes || !old.open(QIODevice::ReadOnly)) return;
      list = old.readAll();
    }
    const QByteArray text = with_recent(list, file, QDateTime::currentDateTimeUtc());
    QSaveFile out(place);
    if (text == list || !QDir().mkpath(folder) || !out.open(QIODevice::WriteOnly)) return;
    out.setPermissions(QFile::ReadOwner | QFile::WriteOwner);  // whose files they are is private
    out.write(text);
    out.commit();
  });
}

}  // namespace gazewright
