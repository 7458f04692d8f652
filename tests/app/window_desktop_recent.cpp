#include <gtest/gtest.h>

#include <QXmlStreamReader>

#include "app/window/desktop_recent.h"

namespace gazewright {
namespace {

const QDateTime kNow(QDate(2026, 11, 26), QTime(14, 2), Qt::UTC);

/// "href added modified" of every entry; "broken" where it is not XML.
QStringList entries(const QByteArray& list) {
  QStringList found;
  QXmlStreamReader in(list);
  while (!in.atEnd()) {
    in.readNext();
    if (!in.isStartElement() || in.name() != QLatin1String("bookmark")) continue;
    QStringList words;
    for (const char* key : {"href", "added", "modified"}) {
      words << in.attributes().value(QLatin1String(key)).toString();
    }
    found << words.join(' ');
  }
  return in.hasError() ? QStringList("broken " + in.errorString()) : found;
}

TEST(DesktopRecent, AFileBeginsANewList) {
  const QByteArray list = with_recent({}, "/home/maker/owl nest/owl.rig.yaml", kNow);
  EXPECT_EQ(entries(list), QStringList("file:///home/maker/owl%20nest/owl.rig.yaml "
                                       "2026-11-26T14:02:00Z 2026-11-26T14:02:00Z"));
  EXPECT_TRUE(list.contains("application/x-gazewright-rig")) << list.toStdString();
}

TEST(DesktopRecent, AFileIsInTheListOnceAndTheOthersStay) {
  QByteArray list = R"(<?xml version="1.0" encoding="UTF-8"?>
<xbel version="1.0" xmlns:bookmark="http://www.freedesktop.org/standards/desktop-bookmarks">
  <bookmark href="file:///tmp/notes.txt" added="2020-01-01T00:00:00Z" modified="2020-01-02T00:00:00Z">
    <info><metadata owner="http://freedesktop.org"><bookmark:applications>
      <bookmark:application name="Notes" exec="&apos;notes %u&apos;" count="3"/>
    </bookmark:applications></metadata></info>
  </bookmark>
</xbel>
)";
  for (int minute = 0; minute < 3; ++minute) {
    list = with_recent(list, "/tmp/owl.rig.yaml", kNow.addSecs(60 * minute));
  }
  EXPECT_EQ(entries(list),
            (QStringList{"file:///tmp/notes.txt 2020-01-01T00:00:00Z 2020-01-02T00:00:00Z",
                         "file:///tmp/owl.rig.yaml 2026-11-26T14:02:00Z 2026-11-26T14:04:00Z"}))
      << list.toStdString();
  EXPECT_TRUE(list.contains("name=\"Notes\"")) << list.toStdString();
  EXPECT_TRUE(list.contains("count=\"3\""));
}

TEST(DesktopRecent, AListThatIsNotXmlIsLeftAlone) {
  for (const QByteArray list : {"<xbel><bookmark href=\"a\">", "not a list", "<xbel", "\xff\xfe"}) {
    EXPECT_EQ(with_recent(list, "/tmp/owl.rig.yaml", kNow), list);
  }
}

}  // namespace
}  // namespace gazewright
