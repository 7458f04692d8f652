#include "app/window/shortcuts.h"

#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QTableWidget>
#include <QVBoxLayout>

#include "app/window/actions.h"
#include "app/window/widgets.h"

namespace gazewright {
namespace {

/// Keys that a widget takes while it has the focus.
struct WidgetKey {
  const char *place, *keys, *what;
};
#define TEXT(text) QT_TRANSLATE_NOOP("Shortcuts", text)
constexpr WidgetKey kKeys[]{
    {TEXT("Everywhere"), TEXT("Tab, Shift+Tab"),
     TEXT("go to the next control, or to the one before")},
    {TEXT("Everywhere"), TEXT("F10"), TEXT("go to the menus")},
    {TEXT("Drive lines"), TEXT("← →"), TEXT("from tile to tile")},
    {TEXT("Drive lines"), TEXT("Space"), TEXT("show the card of the tile")},
    {TEXT("Ratio scale"), TEXT("← → ↑ ↓"), TEXT("a lower or higher ratio")},
    {TEXT("Ratio scale"), TEXT("Shift+← →"), TEXT("the same in fine steps")},
    {TEXT("Ratio scale"), TEXT("Page Up, Page Down"), TEXT("the same in steps of a quarter")},
    {TEXT("Ratio scale"), TEXT("Home, End"), TEXT("the quickest ratio")},
    {TEXT("Ratio scale"), TEXT("0 … 9"), TEXT("type a ratio, in the gearbox's card")},
    {TEXT("Findings"), TEXT("↑ ↓"), TEXT("select a finding and show its part")},
    {TEXT("Findings"), TEXT("Enter, Space"), TEXT("apply a remedy")},
    {TEXT("Fields"), TEXT("Enter"), TEXT("take the entry")},
    {TEXT("Fields"), TEXT("↑ ↓, Page Up, Page Down"),
     TEXT("one more or less in the second digit; ten")},
    {TEXT("Fields"), TEXT("Escape"), TEXT("bring the last valid entry back")},
    {TEXT("Plots"), TEXT("← →"), TEXT("step the cursor")},
    {TEXT("Plots"), TEXT("+ −, Alt++, Alt+−"), TEXT("zoom; only across")},
    {TEXT("Plots"), TEXT("↑ ↓"), TEXT("zoom up and down")},
    {TEXT("Plots"), TEXT("Home"), TEXT("whole view")},
    {TEXT("Plots"), TEXT("Alt+← →"), TEXT("view before and after")},
    {TEXT("Plots"), TEXT("Ctrl+arrows"), TEXT("move the view")},
    {TEXT("Plots"), TEXT("B, H, Z"), TEXT("second cursor; hold the cursor; zoom to between them")},
    {TEXT("Plots"), TEXT("D"), TEXT("difference to the next variant; the curves themselves")},
    {TEXT("Plots"), TEXT("F, G, L, R, 1 … 9"),
     TEXT("fixed scale; grid; logarithmic time; rad/s for Hz; show or hide a line")},
    {TEXT("Plots"), TEXT("Menu key, Shift+F10"), TEXT("the menu of the plot")},
    {TEXT("Drawing"), TEXT("Tab"), TEXT("the next handle")},
    {TEXT("Drawing"), TEXT("← → ↑ ↓"), TEXT("move the handle by 1 mm")},
    {TEXT("Drawing"), TEXT("Shift+← →"), TEXT("the same by 0.1 mm")},
    {TEXT("Drawing"), TEXT("Page Up, Page Down"), TEXT("the same by 10 mm")},
    {TEXT("Drawing"), TEXT("Space"), TEXT("play the simulated move, or stop it")},
    {TEXT("Drawing"), TEXT("Alt while dragging"), TEXT("not on whole millimetres")},
    {TEXT("Drawing"), TEXT("Escape"), TEXT("take the drag back")},
    {TEXT("Travel dials"), TEXT("← → ↑ ↓"), TEXT("move the chosen mark")},
    {TEXT("Travel dials"), TEXT("Shift+← →"), TEXT("the same in fine steps")},
    {TEXT("Travel dials"), TEXT("Page Up, Page Down"), TEXT("choose another mark")},
    {TEXT("Travel dials"), TEXT("Enter"), TEXT("type the mark's value")},
    {TEXT("Travel dials"), TEXT("Escape"), TEXT("take the drag back")},
    {TEXT("Figures"), TEXT("↑ ↓"), TEXT("explain another figure")},
    {TEXT("Figures"), TEXT("Enter"),
     TEXT("go to the explanation; Tab there goes from link to link")},
    {TEXT("Figures"), TEXT("Escape"), TEXT("close the window")},
    {TEXT("Worth measuring"), TEXT("↑ ↓"), TEXT("choose another value")},
    {TEXT("Worth measuring"), TEXT("Enter"), TEXT("go to the value's field")}};
#undef TEXT

QString tr(const char* text) { return QCoreApplication::translate("Shortcuts", text); }

}  // namespace

std::vector<Shortcut> all_shortcuts(const Actions& actions) {
  std::vector<Shortcut> all;
  for (const ActionInfo& info : action_table()) {
    const QAction* action = actions[info.id];
    QStringList keys;
    for (const QKeySequence& key : action->shortcuts())
      keys << key.toString(QKeySequence::NativeText);
    if (!keys.isEmpty())
      all.push_back({tr("Window"), keys.join(QStringLiteral(", ")), action->toolTip()});
  }
  for (const WidgetKey& key : kKeys) all.push_back({tr(key.place), tr(key.keys), tr(key.what)});
  return all;
}

ShortcutsWindow::ShortcutsWindow(const Actions& actions, QWidget* parent) : QDialog(parent) {
  setWindowTitle(tr("Keyboard shortcuts"));
  const std::vector<Shortcut> all = all_shortcuts(actions);
  auto* table = new QTableWidget(static_cast<int>(all.size()), 3);
  table->setAccessibleName(tr("Keyboard shortcuts"));
  table->setHorizontalHeaderLabels({tr("Where"), tr("Keys"), tr("What")});
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  showAsList(table);
  for (int row = 0; row < table->rowCount(); ++row) {
    const Shortcut& entry = all[static_cast<std::size_t>(row)];
    table->setItem(row, 0, new QTableWidgetItem(entry.place));
    table->setItem(row, 1, new QTableWidgetItem(entry.keys));
    table->setItem(row, 2, new QTableWidgetItem(entry.what));
  }
  table->resizeColumnsToContents();
  table->horizontalHeader()->setStretchLastSection(true);
  auto* search = searchEdit(tr("Search the shortcuts"), tr("Search the shortcuts"));
  connect(search, &QLineEdit::textChanged, table, [table](const QString& words) {
    for (int row = 0; row < table->rowCount(); ++row) {
      bool found = words.isEmpty();
      for (int column = 0; column < 3; ++column)
        found = found || table->item(row, column)->text().contains(words, Qt::CaseInsensitive);
      table->setRowHidden(row, !found);
    }
  });
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(search);
  layout->addWidget(table, 1);
  layout->addWidget(buttons);
  resize(720, 600);
}

}  // namespace gazewright
