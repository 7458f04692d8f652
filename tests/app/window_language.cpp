#include <gtest/gtest.h>

#include <QKeySequence>
#include <QLabel>
#include <QMenuBar>
#include <QTranslator>
#include <algorithm>
#include <set>

#include "app/window/figures_window.h"
#include "app/window/language.h"
#include "app/window/parts.h"
#include "core/analysis/say.h"
#include "core/words/words.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

/// Asked first, and only listens: the texts that no translation of ours has.
class Listening : public QTranslator {
 public:
  explicit Listening(const QString& file) {
    if (!ours_.load(file)) qFatal("no translation %s", qPrintable(file));
  }
  bool isEmpty() const override { return false; }
  QString translate(const char* context, const char* source, const char*,
                    int count) const override {
    const std::string_view who = context;
    // Core's sentences come by twice, the second time translated: desktop.translations looks at
    // them.
    const bool is_of_core = who == "gazewright";
    const bool is_of_qt = who.starts_with('Q');
    const bool is_known = !ours_.translate("gazewright", source, nullptr, count).isEmpty();
    if (!is_of_qt && !is_of_core && !is_known && source[0] != '\0') missing_.insert(source);
    return {};
  }
  std::string missing() const {
    std::string list;
    for (const std::string& text : missing_) list += "\"" + text + "\"\n";
    return list;
  }

 private:
  QTranslator ours_;
  mutable std::set<std::string> missing_;
};

TEST(Language, GermanIsWhatTheWindowAndItsFindingsSpeak) {
  use_language(*qApp, "de");
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  QStringList menus;
  for (const QAction* menu : owl.window.menuBar()->actions())
    menus << QString(menu->text()).remove('&');
  EXPECT_TRUE(menus.contains("Bearbeiten")) << menus.join('|').toStdString();
  EXPECT_FALSE(menus.contains("Edit"));
  for (const Finding& finding : owl.window.recompute().analysis()->findings)
    EXPECT_NE(finding.what, "Move and settle in time") << finding.id;
  const QuantityField* ratio = owl.field("pan.gearbox.ratio");
  if (ratio == nullptr) {
    owl.window.select("pan.gearbox");
    ratio = owl.field("pan.gearbox.ratio");
  }
  ASSERT_NE(ratio, nullptr);
  const auto labels = owl.window.card().findChildren<QLabel*>();
  EXPECT_TRUE(
      std::ranges::any_of(labels, [](auto* label) { return label->text() == "Übersetzung"; }));
}

TEST(Language, NamesOfKeysAreQtsOwnBusiness) {
  const QString english = QKeySequence(Qt::Key_Home).toString(QKeySequence::NativeText);
  use_language(*qApp, "de");
  const QString german = QKeySequence(Qt::Key_Home).toString(QKeySequence::NativeText);
  EXPECT_TRUE(german == english || german == "Pos1") << german.toStdString();
}

TEST(Language, NumbersInSentencesAreWrittenAsAtTheDesktop) {
  QLocale::setDefault(QLocale(QStringLiteral("de_DE")));
  use_language(*qApp, "desktop");
  EXPECT_EQ(say(1.25, "A", "A"), "1,25 A");
  EXPECT_EQ(words("pan"), "Pan");
}

TEST(Language, NumbersInEnglishSentencesAreWrittenAsAtTheDesktopToo) {
  QLocale::setDefault(QLocale(QStringLiteral("fr_FR")));
  use_language(*qApp, "desktop");
  EXPECT_EQ(say(1.25, "A", "A"), "1,25 A");
  EXPECT_TRUE(is_english());
}

TEST(Language, OneThatIsNotThereLeavesEnglish) {
  use_language(*qApp, "en");
  EXPECT_TRUE(is_english());
  use_language(*qApp, "fr");
  EXPECT_TRUE(is_english());
  OwlWindow owl;
  EXPECT_EQ(QString(owl.window.menuBar()->actions()[1]->text()).remove('&'), "Edit");
}

TEST(Language, NothingThatIsShownLacksItsGerman) {
  use_language(*qApp, "de");
  Listening listening(QStringLiteral(":/words/gazewright_de.qm"));
  QCoreApplication::installTranslator(&listening);
  {
    OwlWindow owl;
    ASSERT_TRUE(owl.sweep());
    for (const PartEntry& entry : all_parts(owl.rig()))
      if (!entry.part.empty()) owl.window.select(QString::fromStdString(entry.part));
    for (const char* action : {"show.why", "show.figures", "show.doubts", "show.shelf",
                               "edit.variants", "edit.settings", "help.shortcuts", "axis.fit"}) {
      owl.window.actions()[action]->trigger();
      QTest::qWait(20);
    }
    owl.window.writeSheet(owl.path("owl.pdf"));
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return QFile::exists(owl.path("owl.pdf")); }, tests::kPatience_ms));
  }
  QCoreApplication::removeTranslator(&listening);
  EXPECT_EQ(listening.missing(), "");
}

}  // namespace
}  // namespace gazewright
