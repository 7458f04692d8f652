#include <gtest/gtest.h>

#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>
#include <QScrollBar>
#include <QTableView>
#include <QTableWidget>
#include <QTextBrowser>
#include <algorithm>
#include <map>

#include "app/window/explainer.h"
#include "app/window/findings_view.h"
#include "app/window/guide_strip.h"
#include "app/window/handbook.h"
#include "app/window/help_places.h"
#include "app/window/parts.h"
#include "app/window/places.h"
#include "app/window/plots_panel.h"
#include "app/window/shortcuts.h"
#include "core/analysis/checks.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

/// Whether the handbook has the page, and on it the heading.
bool has_heading(const std::vector<HandbookPage>& pages, const HelpPlace& place) {
  const auto page = std::ranges::find(pages, place.page, &HandbookPage::file);
  if (page == pages.end()) return false;
  return place.section.isEmpty() ||
         std::ranges::any_of(page->sections, [&](const HandbookSection& section) {
           return section.title == place.section;
         });
}

TEST(Help, EveryCardHasItsPlaceInTheHandbook) {
  const auto pages = read_handbook(handbook_folder());
  ASSERT_FALSE(pages.empty());
  OwlWindow owl;
  Rig rig = owl.rig();
  for (const PartEntry& entry : all_parts(rig)) {
    if (entry.part.empty()) continue;
    const HelpPlace place = help_for_part(entry.part);
    EXPECT_TRUE(has_heading(pages, place))
        << entry.part << ": " << place.page.toStdString() << " " << place.section.toStdString();
  }
  for (const FieldRef& field : all_fields(rig)) {
    EXPECT_TRUE(has_heading(pages, help_for_part(path_of(field)))) << path_of(field);
  }
}

TEST(Help, EveryPlotHasASectionOfItsOwnName) {
  const auto pages = read_handbook(handbook_folder());
  for (const PlotKind kind : plot_kinds()) {
    EXPECT_TRUE(has_heading(pages, help_for_plot(kind))) << plot_title(kind).toStdString();
  }
}

TEST(Help, EveryFindingIsInTheHandbook) {
  const auto pages = read_handbook(handbook_folder());
  const auto page = std::ranges::find(pages, QStringLiteral("findings.md"), &HandbookPage::file);
  ASSERT_NE(page, pages.end());
  for (const Check* check : axis_checks()) {
    const QString id = help_for_finding(std::string(check->id)).section;
    EXPECT_TRUE(page->text.contains(id)) << check->id;
  }
}

TEST(Help, TheNamesOnScreenAreHeadings) {
  const auto pages = read_handbook(handbook_folder());
  for (const char* name : {"Findings", "Drawing", "Drive lines", "Ratio scale", "Card", "Figures",
                           "Messages", "Plots", "First steps", "Settings", "Worth measuring"}) {
    EXPECT_TRUE(has_heading(pages, help_for_window(name))) << name;
  }
}

TEST(Help, F1OpensWhereTheFocusIs) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.select("pan.gearbox");
  owl.field("pan.gearbox.backlash")->edit()->setFocus();
  owl.window.actions()["help.handbook"]->trigger();
  Handbook* handbook = owl.window.explainer().handbook();
  ASSERT_NE(handbook, nullptr);
  EXPECT_EQ(handbook->page(), "rig-file.md");
  EXPECT_EQ(handbook->section(), "Gearbox");

  PlotView* plot = owl.window.plots().plot(PlotKind::step);
  plot->setFocus();
  owl.window.actions()["help.handbook"]->trigger();
  EXPECT_EQ(handbook->section(), "Step response");
  EXPECT_GT(handbook->text()->verticalScrollBar()->value(), 0);

  QTableView* table = owl.window.findings().table();
  table->selectRow(0);
  table->setFocus();
  owl.window.actions()["help.handbook"]->trigger();
  EXPECT_EQ(handbook->page(), "findings.md");
  EXPECT_FALSE(handbook->section().isEmpty());
}

TEST(Help, SearchFindsSectionsAndMarksTheWords) {
  Handbook handbook(handbook_folder());
  QTest::keyClicks(handbook.search(), "clock spring");
  ASSERT_GT(handbook.list()->count(), 0);
  EXPECT_FALSE(handbook.text()->extraSelections().isEmpty());
  for (const QTextEdit::ExtraSelection& mark : handbook.text()->extraSelections()) {
    const QString word = mark.cursor.selectedText().toLower();
    EXPECT_TRUE(word == "clock" || word == "spring") << word.toStdString();
  }
  const auto marks = handbook.text()->extraSelections();
  EXPECT_TRUE(std::ranges::any_of(marks, [&](const QTextEdit::ExtraSelection& mark) {
    return mark.cursor.selectionStart() == handbook.text()->textCursor().position();
  })) << "it stands at a place that was found";
  handbook.search()->setText("zzzz nothing");
  EXPECT_EQ(handbook.list()->count(), 0);
  handbook.search()->clear();
  EXPECT_GT(handbook.list()->count(), 20);
  EXPECT_TRUE(handbook.text()->extraSelections().isEmpty());
}

TEST(Help, EveryLinkBetweenPagesLeadsToAPage) {
  const auto pages = read_handbook(handbook_folder());
  const QRegularExpression link(QStringLiteral("\\]\\(([a-z-]+\\.md)"));
  for (const HandbookPage& page : pages) {
    auto links = link.globalMatch(page.text);
    while (links.hasNext()) {
      const QString target = links.next().captured(1);
      EXPECT_NE(std::ranges::find(pages, target, &HandbookPage::file), pages.end())
          << page.file.toStdString() << " -> " << target.toStdString();
    }
  }
}

TEST(Shortcuts, HaveNoTwoOfAKind) {
  OwlWindow owl;
  std::map<QString, QString> seen;
  for (const ActionInfo& info : action_table()) {
    for (const QKeySequence& key : owl.window.actions()[info.id]->shortcuts()) {
      const auto [at, fresh] = seen.emplace(key.toString(), info.id);
      EXPECT_TRUE(fresh) << info.id << " and " << at->second.toStdString() << ": "
                         << key.toString().toStdString();
    }
  }
  std::map<std::pair<QString, QString>, QString> widgets;
  for (const Shortcut& entry : all_shortcuts(owl.window.actions())) {
    EXPECT_TRUE(widgets.emplace(std::pair(entry.place, entry.keys), entry.what).second)
        << entry.place.toStdString() << " " << entry.keys.toStdString();
  }
}

TEST(Shortcuts, TheirWindowListsEveryAction) {
  OwlWindow owl;
  const ShortcutsWindow list(owl.window.actions());
  const auto* table = list.findChild<QTableWidget*>();
  QStringList keys;
  for (int row = 0; row < table->rowCount(); ++row) keys << table->item(row, 1)->text();
  for (const ActionInfo& info : action_table()) {
    const QAction* action = owl.window.actions()[info.id];
    if (action->shortcut().isEmpty()) continue;
    EXPECT_TRUE(keys.join(' ').contains(action->shortcut().toString(QKeySequence::NativeText)))
        << info.id;
  }
}

/// The names of what a menu and the menus in it hold; each menu's access keys are its own.
QStringList entries_of(const QMenu& menu) {
  QStringList names;
  std::map<QChar, QString> access;
  for (const QAction* entry : menu.actions()) {
    names << entry->objectName();
    if (entry->menu()) names << entries_of(*entry->menu());
    const qsizetype at = entry->text().indexOf('&');
    if (at < 0) continue;
    const auto [twin, fresh] = access.emplace(entry->text()[at + 1].toLower(), entry->text());
    EXPECT_TRUE(fresh) << entry->text().toStdString() << " and " << twin->second.toStdString();
  }
  return names;
}

TEST(Shortcuts, MenusHaveEveryCommandWithAKeyOfItsOwn) {
  OwlWindow owl;
  QStringList in_menus;
  for (const QAction* top : owl.window.menuBar()->actions()) in_menus << entries_of(*top->menu());
  for (const ActionInfo& info : action_table()) {
    EXPECT_TRUE(in_menus.contains(QString::fromUtf8(info.id))) << info.id << " is in no menu";
  }
}

}  // namespace
}  // namespace gazewright
