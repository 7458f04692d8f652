#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QFontInfo>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QScrollArea>
#include <QSettings>
#include <QTableView>
#include <QTextBrowser>
#include <QTextDocument>
#include <QToolButton>
#include <QToolTip>
#include <array>
#include <utility>

#include "app/plots/chart_plot.h"
#include "app/window/ask_where.h"
#include "app/window/drawing_panel.h"
#include "app/window/drive_line.h"
#include "app/window/explainer.h"
#include "app/window/figures_window.h"
#include "app/window/findings_view.h"
#include "app/window/handbook.h"
#include "app/window/look.h"
#include "app/window/message_bar.h"
#include "app/window/plots_panel.h"
#include "app/window/ratio_scale.h"
#include "app/window/settings_window.h"
#include "app/window/tile.h"
#include "app/window/variants_desk.h"
#include "app/window/variants_dialog.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

/// What one test sets must not be seen by the next in the same program.
class WindowSettings : public ::testing::Test {
 protected:
  void TearDown() override {
    set_text_size(100);
    set_calm(false);
  }
};

SettingsWindow& settings_of(OwlWindow& owl) {
  owl.window.actions()["edit.settings"]->trigger();
  return *owl.window.settingsWindow();
}

/// Chooses an entry as a user does.
void choose(SettingsWindow& settings, const char* name, const char* value) {
  auto* combo = settings.findChild<QComboBox*>(name);
  ASSERT_NE(combo, nullptr) << name;
  const int index = combo->findData(QString(value));
  ASSERT_GE(index, 0) << value;
  combo->setCurrentIndex(index);
  emit combo->activated(index);
}

TEST_F(WindowSettings, KeysAreThoseOfTheDesktop) {
  OwlWindow owl;
  const Actions& actions = owl.window.actions();
  EXPECT_EQ(actions["edit.settings"]->shortcut(), QKeySequence("Ctrl+,"));
  EXPECT_EQ(actions["show.larger"]->shortcut(), QKeySequence("Ctrl++"));
  EXPECT_EQ(actions["show.smaller"]->shortcut(), QKeySequence("Ctrl+-"));
  EXPECT_EQ(actions["show.usual_size"]->shortcut(), QKeySequence("Ctrl+0"));
}

TEST_F(WindowSettings, TextGrowsInEveryPartOfTheWindowAndComesBack) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.actions()["show.figures"]->trigger();
  owl.window.actions()["help.handbook"]->trigger();
  owl.window.select("pan.gearbox");
  PlotView* plot = owl.window.plots().plot(PlotKind::step);
  Handbook* book = owl.window.explainer().handbook();
  const auto letters = [&] {
    return std::array{
        owl.field("pan.gearbox.ratio")->edit()->fontInfo().pixelSize(),
        owl.window.driveLine(Axis::pan).tile("pan.motor")->fontInfo().pixelSize(),
        owl.window.findings().table()->fontInfo().pixelSize(),
        plot->charts().front()->canvas()->style().font.pixelSize(),
        owl.window.drawing().canvas()->fontInfo().pixelSize(),
        QFontInfo(book->findChild<QTextBrowser*>()->document()->defaultFont()).pixelSize(),
        owl.window.menuBar()->fontInfo().pixelSize()};
  };
  const auto usual = letters();
  const int field = owl.field("pan.gearbox.ratio")->edit()->width();
  const int tile = owl.window.driveLine(Axis::pan).height();
  const int column = owl.window.explainer().figures()->table()->columnWidth(2);
  for (int i = 0; i < 20; ++i) owl.window.actions()["show.larger"]->trigger();
  EXPECT_EQ(owl.window.preferences().text_percent, 200) << "and not beyond";
  QCoreApplication::processEvents();
  const auto large = letters();
  for (std::size_t i = 0; i < usual.size(); ++i) {
    // whole pixels, each rounded: at most one off on either side of the factor
    EXPECT_NEAR(large[i], 2 * usual[i], 1.5) << "place " << i;
  }
  EXPECT_GT(owl.field("pan.gearbox.ratio")->edit()->width(), 1.8 * field);
  EXPECT_GT(owl.window.driveLine(Axis::pan).height(), 1.4 * tile);
  EXPECT_GT(owl.window.explainer().figures()->table()->columnWidth(2), 1.5 * column);
  owl.window.actions()["show.usual_size"]->trigger();
  QCoreApplication::processEvents();
  EXPECT_EQ(letters(), usual);
  EXPECT_EQ(owl.field("pan.gearbox.ratio")->edit()->width(), field);
  for (int i = 0; i < 20; ++i) owl.window.actions()["show.smaller"]->trigger();
  EXPECT_EQ(owl.window.preferences().text_percent, 80);
}

TEST_F(WindowSettings, AreKeptAndCountFromTheFirstLetterOfTheNextStart) {
  OwlWindow owl;
  const int usual = owl.window.fontInfo().pixelSize();
  owl.window.setTextPercent(150);
  SettingsWindow& settings = settings_of(owl);
  choose(settings, "settings.paper", "letter");
  choose(settings, "settings.theme", "contrast");
  choose(settings, "settings.language", "de");
  settings.findChild<QCheckBox*>("settings.calm")->click();
  set_text_size(100);
  MainWindow next({.settings_file = owl.path("settings.ini"), .theme = {}});
  EXPECT_EQ(next.preferences(), owl.window.preferences());
  EXPECT_EQ(next.preferences().text_percent, 150);
  EXPECT_EQ(next.preferences().language, "de");
  EXPECT_NEAR(next.fontInfo().pixelSize(), 1.5 * usual, 1);
}

TEST_F(WindowSettings, ThatAreNotAllowedCountAsNotSet) {
  OwlWindow owl;
  {
    QSettings file(owl.path("strange.ini"), QSettings::IniFormat);
    file.setValue("theme", "plaid");
    file.setValue("text_percent", "gross");
    file.setValue("paper", 7);
    file.setValue("start", "");
    file.setValue("language", "volapuk");
  }
  EXPECT_EQ(Settings(owl.path("strange.ini")).preferences(), Preferences());
  {
    QSettings file(owl.path("strange.ini"), QSettings::IniFormat);
    file.setValue("text_percent", 5000);
  }
  EXPECT_EQ(Settings(owl.path("strange.ini")).preferences().text_percent, 200);
}

TEST_F(WindowSettings, CountAtOnce) {
  OwlWindow owl;
  SettingsWindow& settings = settings_of(owl);
  EXPECT_FALSE(settings.isModal());
  choose(settings, "settings.theme", "dark");
  EXPECT_LT(QApplication::palette().color(QPalette::Window).lightness(), 128);
  EXPECT_TRUE(owl.window.actions()["show.dark"]->isChecked());
  owl.window.actions()["show.light"]->trigger();
  EXPECT_EQ(settings.findChild<QComboBox*>("settings.theme")->currentData(), QVariant("light"))
      << "the menu and the window say the same";
  QApplication::setEffectEnabled(Qt::UI_General, true);
  QApplication::setEffectEnabled(Qt::UI_AnimateMenu, true);
  QApplication::setCursorFlashTime(1000);
  auto* calm = settings.findChild<QCheckBox*>("settings.calm");
  calm->click();
  EXPECT_FALSE(QApplication::isEffectEnabled(Qt::UI_AnimateMenu));
  EXPECT_EQ(QApplication::cursorFlashTime(), 0);
  calm->click();
  EXPECT_TRUE(QApplication::isEffectEnabled(Qt::UI_AnimateMenu));
  EXPECT_EQ(QApplication::cursorFlashTime(), 1000);
}

/// Source: ISO 216 A4 is 210 mm × 297 mm, 595 × 842 points; ANSI Letter is 612 × 792.
TEST_F(WindowSettings, PaperIsThatOfTheNextSheet) {
  OwlWindow owl;
  ASSERT_TRUE(owl.sweep());
  SettingsWindow& settings = settings_of(owl);
  for (const auto& [word, box] : {std::pair{"letter", "612"}, std::pair{"a4", "595"}}) {
    choose(settings, "settings.paper", word);
    owl.window.writeSheet(owl.path("sheet.pdf"));
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return QFile::exists(owl.path("sheet.pdf")); }, tests::kPatience_ms));
    const std::string pdf = owl.read("sheet.pdf");
    const auto at = pdf.find("/MediaBox [");
    ASSERT_NE(at, pdf.npos);
    EXPECT_NE(pdf.substr(at, 40).find(box), std::string::npos) << pdf.substr(at, 40);
    QFile::remove(owl.path("sheet.pdf"));
  }
}

TEST_F(WindowSettings, SayWhatOpensAtTheNextStart) {
  OwlWindow owl;
  const QString settings = owl.path("settings.ini");
  const auto opens = [&](const char* start) {
    Settings file(settings);
    Preferences wanted;
    wanted.start = start;
    file.setPreferences(wanted);
    MainWindow next({.settings_file = settings, .theme = "light"});
    next.openFirst();
    return QString::fromStdString(next.document().rig().title) + "|" + next.document().file();
  };
  EXPECT_EQ(opens("last"), "Tide-pool owl|" + owl.path("owl.rig.yaml"));
  EXPECT_EQ(opens("new"), QString::fromStdString(blank_rig().title) + "|");
  EXPECT_NE(opens("sample"), opens("new"));
  EXPECT_TRUE(opens("sample").endsWith('|')) << "a sample is not the user's file";
  QFile::remove(owl.path("owl.rig.yaml"));
  EXPECT_EQ(opens("last"), opens("sample")) << "the file is gone";
}

TEST_F(WindowSettings, RestoredDefaultsAreUndoneByTheNotice) {
  OwlWindow owl;
  SettingsWindow& settings = settings_of(owl);
  choose(settings, "settings.theme", "dark");
  choose(settings, "settings.start", "new");
  owl.window.setTextPercent(125);
  const Preferences chosen = owl.window.preferences();
  settings.findChild<QToolButton*>("settings.defaults")->click();
  EXPECT_EQ(owl.window.preferences(), Preferences());
  EXPECT_EQ(Settings(owl.path("settings.ini")).preferences(), Preferences());
  auto* undo = settings.messages().findChild<QToolButton*>("notice.undo");
  ASSERT_TRUE(undo->isVisible());
  undo->click();
  EXPECT_EQ(owl.window.preferences(), chosen);
  EXPECT_EQ(settings.findChild<QComboBox*>("settings.start")->currentData(), QVariant("new"));
  EXPECT_EQ(settings.messages().text(), "");
}

TEST_F(WindowSettings, AResetLayoutIsUndoneByTheNotice) {
  OwlWindow owl;
  owl.window.plots().setKinds({PlotKind::travel, PlotKind::reach});
  owl.window.resize(1200, 700);
  owl.window.actions()["show.reset"]->trigger();
  EXPECT_EQ(owl.window.plots().kinds(), PlotsPanel::usualKinds());
  auto* undo = owl.window.messages().findChild<QToolButton*>("notice.undo");
  ASSERT_TRUE(undo->isVisible());
  undo->click();
  EXPECT_EQ(owl.window.plots().kinds(), (std::vector{PlotKind::travel, PlotKind::reach}));
  EXPECT_EQ(owl.window.size(), QSize(1200, 700));
  owl.window.messages().showNotice("Something else.");
  EXPECT_FALSE(undo->isVisible());
}

TEST_F(WindowSettings, ShowWhereThingsLie) {
  OwlWindow owl;
  SettingsWindow& settings = settings_of(owl);
  QStringList paths;
  for (const auto* edit : settings.findChildren<QLineEdit*>()) {
    EXPECT_TRUE(edit->isReadOnly());
    paths << edit->text();
  }
  ASSERT_EQ(paths.size(), 2);
  EXPECT_TRUE(paths[0].endsWith("gazewright/shelf")) << paths[0].toStdString();
  EXPECT_TRUE(paths[1].endsWith("gazewright/data")) << paths[1].toStdString();
}

TEST_F(WindowSettings, FitASmallScreenWithTextOfTwiceTheSize) {
  OwlWindow owl;
  owl.window.setTextPercent(200);
  SettingsWindow& settings = settings_of(owl);
  EXPECT_LE(settings.width(), 1366);
  EXPECT_LE(settings.height(), 768);
  const auto* page = settings.findChild<QScrollArea*>();
  EXPECT_LE(page->widget()->minimumSizeHint().width(), page->viewport()->width())
      << "what is too high scrolls, nothing is cut at the side";
}

/// Source: WCAG 2.2, 1.4.4, text of twice the size without loss of content.
TEST_F(WindowSettings, TextOfTwiceTheSizeLosesNothingOnASmallScreen) {
  OwlWindow owl;
  owl.window.resize(1366, 768);
  ASSERT_TRUE(owl.settle());
  owl.window.setTextPercent(200);
  QCoreApplication::processEvents();
  EXPECT_LE(owl.window.width(), 1366);
  EXPECT_LE(owl.window.height(), 768);
  const auto* scroll = qobject_cast<QScrollArea*>(owl.window.centralWidget());
  const QWidget* all = scroll->widget();
  EXPECT_LE(all->width(), scroll->viewport()->width()) << "it scrolls up and down only";
  int seen = 0;
  for (const QWidget* widget : all->findChildren<QWidget*>()) {
    if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus) continue;
    const QScrollArea* inner = nullptr;
    for (const QWidget* at = widget->parentWidget(); at != all && !inner; at = at->parentWidget())
      inner = qobject_cast<const QScrollArea*>(at);
    const QWidget* within = inner ? inner->widget() : all;
    const QRect place(widget->mapTo(within, QPoint(0, 0)), widget->size());
    EXPECT_TRUE(within->rect().contains(place))
        << widget->metaObject()->className() << " " << widget->objectName().toStdString();
    EXPECT_GE(place.width(), 12) << widget->objectName().toStdString();
    ++seen;
  }
  EXPECT_GT(seen, 40);
}

TEST_F(WindowSettings, RecentFilesAndLayoutComeOverFromTheirOldPlaceOnce) {
  const QTemporaryDir folder;
  const QString file = folder.filePath("old.ini");
  {
    QSettings old(file, QSettings::IniFormat);
    old.setValue("theme", "dark");
    old.setValue("recent", QStringList{"/rigs/a.rig.yaml", "/rigs/b.rig.yaml"});
    old.setValue("layout/plots", QStringList{"travel", "reach"});
  }
  {
    Settings now(file);
    EXPECT_EQ(now.recentFiles(), (QStringList{"/rigs/a.rig.yaml", "/rigs/b.rig.yaml"}));
    EXPECT_EQ(now.plots(), (QStringList{"travel", "reach"}));
    EXPECT_EQ(now.preferences().theme, "dark");
    now.setRecentFiles({});
  }
  EXPECT_EQ(QSettings(file, QSettings::IniFormat).allKeys(), QStringList("theme"));
  EXPECT_EQ(Settings(file).recentFiles(), QStringList()) << "a second time would bring them back";
}

TEST_F(WindowSettings, OldRecentFilesDoNotTakeThePlaceOfNewerOnes) {
  const QTemporaryDir folder;
  const QString file = folder.filePath("old.ini");
  Settings(file).setRecentFiles({"/rigs/new.rig.yaml"});
  QSettings(file, QSettings::IniFormat).setValue("recent", QStringList("/rigs/old.rig.yaml"));
  EXPECT_EQ(Settings(file).recentFiles(), QStringList("/rigs/new.rig.yaml"));
}

TEST_F(WindowSettings, AForgottenListOfRecentRigsComesBackByTheNotice) {
  OwlWindow owl;
  QMenu* recent = nullptr;
  for (QMenu* menu : owl.window.menuBar()->findChildren<QMenu*>()) {
    if (menu->title().remove('&') == "Recent") recent = menu;
  }
  ASSERT_NE(recent, nullptr);
  emit recent->aboutToShow();
  recent->actions().back()->trigger();
  EXPECT_TRUE(Settings(owl.path("settings.ini")).recentFiles().isEmpty());
  owl.window.messages().findChild<QToolButton*>("notice.undo")->click();
  EXPECT_EQ(Settings(owl.path("settings.ini")).recentFiles(),
            QStringList(owl.path("owl.rig.yaml")));
}

TEST_F(WindowSettings, ExportsAreNamedAfterTheRig) {
  EXPECT_EQ(export_name("owl.rig.yaml", ".pdf"), "owl.pdf");
  EXPECT_EQ(export_name("owl.v2.rig.yaml", "-step.csv"), "owl.v2-step.csv");
  EXPECT_EQ(export_name("owl.yml", ".pdf"), "owl.pdf");
  EXPECT_EQ(export_name("owl", ".pdf"), "owl.pdf");
}

TEST_F(WindowSettings, TipsComeUpByKeyboard) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  EXPECT_EQ(owl.window.actions()["help.tip"]->shortcut(), QKeySequence("Shift+F1"));
  RatioScale* scale = owl.window.driveLine(Axis::pan).ratioScale();
  scale->setFocus();
  owl.window.actions()["help.tip"]->trigger();
  EXPECT_EQ(QToolTip::text(), scale->toolTip());
  owl.window.findings().table()->setFocus();
  owl.window.findings().selectFirst();
  owl.window.actions()["help.tip"]->trigger();
  EXPECT_FALSE(QToolTip::text().isEmpty());
  EXPECT_NE(QToolTip::text(), scale->toolTip());
  QToolTip::hideText();
}

TEST_F(WindowSettings, TheTableOfVariantsIsMadeWhenItIsFirstWanted) {
  OwlWindow owl;
  EXPECT_EQ(owl.window.findChild<VariantsDialog*>(), nullptr);
  owl.window.actions()["edit.pin"]->trigger();
  EXPECT_EQ(owl.window.findChild<VariantsDialog*>(), nullptr);
  owl.window.actions()["edit.variants"]->trigger();
  auto* dialog = owl.window.findChild<VariantsDialog*>();
  ASSERT_NE(dialog, nullptr);
  EXPECT_TRUE(dialog->actions().contains(owl.window.actions()["edit.undo"]));
  EXPECT_EQ(dialog->model().columnCount(), 2);
}

}  // namespace
}  // namespace gazewright
