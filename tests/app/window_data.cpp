#include <gtest/gtest.h>

#include <QComboBox>
#include <QDesktopServices>
#include <QLabel>

#include "app/sheet/sheet.h"
#include "app/window/data_folder.h"
#include "app/window/material_names.h"
#include "app/window/message_bar.h"
#include "core/analysis/analysis.h"
#include "core/data/data_library.h"
#include "tests/app/window_support.h"

namespace gazewright::tests {
namespace {

/// Own data files in force, until the test ends.
class WindowData : public ::testing::Test {
 protected:
  ~WindowData() override { use_own_data({}); }
  std::vector<Diagnostic> take(const char* file, const char* text) const {
    QFile out(folder.filePath(QString::fromUtf8(file)));
    if (!out.open(QIODevice::WriteOnly)) qFatal("cannot write %s", file);
    out.write(text);
    out.close();
    return take_own_data(folder.path());
  }
  QTemporaryDir folder;
};

/// Catches what would be opened in the desktop's file manager.
class Opened : public QObject {
  Q_OBJECT
 public:
  Opened() { QDesktopServices::setUrlHandler(QStringLiteral("file"), this, "open"); }
  ~Opened() override { QDesktopServices::unsetUrlHandler(QStringLiteral("file")); }
  QStringList files;
 public slots:
  void open(const QUrl& url) { files << url.toLocalFile(); }
};

TEST_F(WindowData, OwnRowsStandInTheChoicesMarkedAndCanBeTaken) {
  ASSERT_TRUE(take("threads.yaml",
                   "M10: {diameter: 10 mm, pitch: 1.5 mm, head_mean: 13.6 mm, source: ruler}\n")
                  .empty());
  OwlWindow owl;
  owl.window.select("pan.bearing");
  auto* combo = owl.window.findChild<QComboBox*>(QStringLiteral("pan.joint.thread"));
  ASSERT_NE(combo, nullptr);
  const int at = combo->findText(QStringLiteral("M10 (own)"));
  ASSERT_GT(at, 0);
  EXPECT_GT(combo->findText(QStringLiteral("M8")), 0);
  combo->setCurrentIndex(at);
  emit combo->activated(at);
  EXPECT_EQ(owl.rig().pan.joint.thread.value, "M10");
  owl.window.document().history().undo();
  EXPECT_EQ(owl.rig().pan.joint.thread.value, "");
}

TEST_F(WindowData, OwnMaterialsAreOfferedToTheArm) {
  ASSERT_TRUE(take("materials.yaml", "carbon: {modulus: 9 GPa, source: bars}\n").empty());
  OwlWindow owl;
  owl.window.select("stand");
  QString all;
  for (const QLabel* label : owl.window.card().findChild<MaterialNames*>()->findChildren<QLabel*>())
    all += label->text();
  EXPECT_TRUE(all.contains("steel, carbon (own).")) << all.toStdString();
}

TEST_F(WindowData, FaultsAreToldInTheBarAndTheRestIsUsed) {
  const auto faults = take("materials.yaml",
                           "carbon: {modulus: 9 GPa, source: bars}\nglass: {modulus: 9 kg, "
                           "source: bars}\n");
  ASSERT_EQ(faults.size(), 1u);
  OwlWindow owl;
  tell_own_data(owl.window.messages(), faults);
  EXPECT_TRUE(owl.window.messages().text().contains("materials.yaml:2:9: error: glass.modulus"))
      << owl.window.messages().text().toStdString();
  EXPECT_TRUE(is_own_row("materials", "carbon"));
}

TEST_F(WindowData, TheMenuMakesTheFolderWithAnExampleThatReadsWithoutAFault) {
  const QByteArray before = qgetenv("XDG_DATA_HOME");
  qputenv("XDG_DATA_HOME", folder.path().toUtf8());
  Opened opened;
  OwlWindow owl;
  owl.window.actions()["help.data"]->trigger();
  const QString place = folder.filePath(QStringLiteral("gazewright/data"));
  EXPECT_EQ(opened.files, QStringList{place});
  EXPECT_TRUE(owl.window.messages().text().contains(place));
  QFile example(place + "/materials.yaml");
  ASSERT_TRUE(example.open(QIODevice::ReadOnly));
  QByteArray text = example.readAll();
  example.close();
  EXPECT_TRUE(take_own_data(place).empty()) << "all of it is comment";
  EXPECT_FALSE(is_own_row("materials", "pla"));
  // Without its first # each line of the example's rows reads too.
  const qsizetype rows = text.indexOf("#my petg:");
  QByteArray used = text.mid(rows, text.indexOf("# Other files") - rows);
  used.replace("#", "");
  ASSERT_TRUE(example.open(QIODevice::WriteOnly));
  example.write(used);
  example.close();
  EXPECT_TRUE(take_own_data(place).empty());
  EXPECT_TRUE(is_own_row("materials", "my petg") && is_own_row("materials", "pla"));
  owl.window.actions()["help.data"]->trigger();
  ASSERT_TRUE(example.open(QIODevice::ReadOnly));
  EXPECT_EQ(example.readAll(), used) << "what is there stays";
  if (before.isEmpty())
    qunsetenv("XDG_DATA_HOME");
  else
    qputenv("XDG_DATA_HOME", before);
}

}  // namespace
}  // namespace gazewright::tests

#include "window_data.moc"
