#include "app/window/actions.h"

#include <QCoreApplication>
#include <QIcon>
#include <QMenu>
#include <cassert>

namespace gazewright {
namespace {

using Key = QKeySequence;

#define TEXT(text) QT_TRANSLATE_NOOP("Actions", text)
const ActionInfo kTable[] = {
    {"rig.new", TEXT("&New"), TEXT("Start a rig with everything missing"), "document-new",
     Key::New},
    {"rig.open", TEXT("&Open…"), TEXT("Open a rig file"), "document-open", Key::Open},
    {"rig.save", TEXT("&Save"), TEXT("Write the rig to its file"), "document-save", Key::Save},
    {"rig.save_as", TEXT("Save &as…"), TEXT("Write the rig to another file"), "document-save-as",
     Key::UnknownKey, "Ctrl+Shift+S"},
    {"rig.sheet", TEXT("Design sheet (&PDF)…"), TEXT("Write the sheet to build from"),
     "document-export", Key::UnknownKey, "Ctrl+E"},
    {"rig.print", TEXT("Prin&t the design sheet…"), TEXT("Put the sheet to build from on paper"),
     "document-print", Key::UnknownKey, "Ctrl+P"},
    {"rig.quit", TEXT("&Quit"), TEXT("Close Gazewright"), "application-exit", Key::Quit, "Ctrl+Q"},
    {"edit.undo", TEXT("&Undo"), TEXT("Take the last change back"), "edit-undo", Key::Undo},
    {"edit.redo", TEXT("&Redo"), TEXT("Make the change again"), "edit-redo", Key::UnknownKey,
     "Ctrl+Shift+Z"},
    {"edit.remedy", TEXT("Apply a re&medy"), TEXT("Apply a remedy of the selected finding"), "",
     Key::UnknownKey, "Ctrl+R"},
    {"edit.body_pan", TEXT("Add a body that turns with &pan only"), TEXT("Add a body to the fork"),
     "", Key::UnknownKey, ""},
    {"edit.body_tilt", TEXT("Add a body that turns with &tilt"), TEXT("Add a body to the ball"), "",
     Key::UnknownKey, ""},
    {"edit.counterweight", TEXT("Add a &counterweight"),
     TEXT("Add a body that balances tilt, or pan where its load is selected; drag it in the "
          "drawing"),
     "", Key::UnknownKey, ""},
    {"edit.keep_out", TEXT("Add a &keep-out"),
     TEXT("Add a window of pan by tilt that the camera must stay out of"), "", Key::UnknownKey, ""},
    {"edit.to_shelf", TEXT("Save this part to the shel&f"),
     TEXT("Keep the part whose card is shown on your parts shelf"), "", Key::UnknownKey, ""},
    {"edit.settings", TEXT("&Settings"), TEXT("Theme, text size, paper, what opens, and folders"),
     "preferences-system", Key::UnknownKey, "Ctrl+,"},
    {"axis.fit", TEXT("Which parts fit &best"),
     TEXT("Rank every motor and gearbox of the shelf for this rig"), "", Key::UnknownKey,
     "Ctrl+Shift+B"},
    {"show.shelf", TEXT("Parts &shelf"), TEXT("Your own parts, to put on an axis"), "",
     Key::UnknownKey, "Ctrl+Shift+H"},
    {"edit.pin", TEXT("P&in this design"), TEXT("Keep the present design as a variant"), "",
     Key::UnknownKey, "Ctrl+D"},
    {"edit.variants", TEXT("&Variants"), TEXT("Compare the present design with its variants"), "",
     Key::UnknownKey, "Ctrl+Shift+D"},
    {"axis.swap", TEXT("&Swap the gearboxes"), TEXT("Pan gets tilt's gearbox and tilt pan's"), "",
     Key::UnknownKey, "Ctrl+Shift+G"},
    {"axis.pan_ratio", TEXT("Go to &pan ratio"), TEXT("Go to pan's ratio scale"), "",
     Key::UnknownKey, "Ctrl+1"},
    {"axis.tilt_ratio", TEXT("Go to &tilt ratio"), TEXT("Go to tilt's ratio scale"), "",
     Key::UnknownKey, "Ctrl+2"},
    {"axis.next", TEXT("&Next part"), TEXT("Show the card of the next part"), "go-next",
     Key::UnknownKey, "Ctrl+PgDown"},
    {"axis.previous", TEXT("P&revious part"), TEXT("Show the card of the part before"),
     "go-previous", Key::UnknownKey, "Ctrl+PgUp"},
    {"show.why", TEXT("&Why?"),
     TEXT("Explain what has the focus: formula, inputs, source, conditions"), "", Key::UnknownKey,
     "F2"},
    {"show.figures", TEXT("All f&igures"), TEXT("Every figure, to search and to explain"),
     "edit-find", Key::Find, "Ctrl+F"},
    {"show.limits", TEXT("What &limits the moves"),
     TEXT("What holds each axis back, and which change would save how much"), "", Key::UnknownKey,
     "Ctrl+L"},
    {"show.doubts", TEXT("Worth m&easuring"),
     TEXT("Which values the headline figures hang on, and how far these can be trusted"), "",
     Key::UnknownKey, "Ctrl+M"},
    {"show.drive_settings", TEXT("Dri&ve settings"),
     TEXT("What to set in the drive of each axis, and with what to begin at the first power-up"),
     "", Key::UnknownKey, "Ctrl+Shift+E"},
    {"show.full", TEXT("F&ull screen"), TEXT("The window over the whole screen"), "",
     Key::UnknownKey, "F11", true},
    {"show.place", TEXT("&Card or drawing"),
     TEXT("Show the other one where both share a place (small windows)"), "", Key::UnknownKey,
     "F9"},
    {"show.play", TEXT("&Play the move"),
     TEXT("Run the simulated move once in real time, or stop it"), "", Key::UnknownKey, "F5"},
    {"show.play_slow", TEXT("Play ten times sl&ower"),
     TEXT("Run the simulated move once at a tenth of its speed, or stop it"), "", Key::UnknownKey,
     "Shift+F5"},
    {"show.more", TEXT("&More plots"), TEXT("Show one plot more, six at most"), "", Key::UnknownKey,
     "Ctrl+Shift+M"},
    {"show.fewer", TEXT("&Fewer plots"), TEXT("Show one plot less, two at least"), "",
     Key::UnknownKey, "Ctrl+Shift+L"},
    {"show.desktop", TEXT("Theme of the &desktop"), TEXT("Light or dark as the desktop is"), "",
     Key::UnknownKey, "", true},
    {"show.light", TEXT("&Light"), TEXT("Light ground"), "", Key::UnknownKey, "", true},
    {"show.dark", TEXT("Dar&k"), TEXT("Dark ground"), "", Key::UnknownKey, "", true},
    {"show.contrast", TEXT("&High contrast"), TEXT("Strongest contrast"), "", Key::UnknownKey, "",
     true},
    {"show.larger", TEXT("&Larger"), TEXT("Larger text in the whole window"), "zoom-in",
     Key::UnknownKey, "Ctrl++"},
    {"show.smaller", TEXT("&Smaller"), TEXT("Smaller text in the whole window"), "zoom-out",
     Key::UnknownKey, "Ctrl+-"},
    {"show.usual_size", TEXT("&Usual size"), TEXT("Text as large as the desktop's"),
     "zoom-original", Key::UnknownKey, "Ctrl+0"},
    {"show.reset", TEXT("&Reset the layout"), TEXT("Sizes and plots as on the first start"), "",
     Key::UnknownKey, ""},
    {"help.handbook", TEXT("&Handbook"),
     TEXT("Formulas, sources and how to, opened at what has the focus"), "help-contents",
     Key::HelpContents, "F1"},
    {"help.guide", TEXT("&First steps"), TEXT("The strip that leads from the masses to the sheet"),
     "", Key::UnknownKey, "", true},
    {"help.shortcuts", TEXT("&Keyboard shortcuts"), TEXT("Every shortcut in one list"), "",
     Key::UnknownKey, "Ctrl+?"},
    {"help.tip", TEXT("What is &this?"), TEXT("Show the tool tip of what has the focus"), "",
     Key::UnknownKey, "Shift+F1"},
    {"help.data", TEXT("Open my &data folder"),
     TEXT("Where your own materials, screws and rules go"), "folder-open", Key::UnknownKey, ""},
    {"help.about", TEXT("&About Gazewright"), TEXT("Version and licences"), "help-about",
     Key::UnknownKey, ""},
};
#undef TEXT

QString translated(const char* text) { return QCoreApplication::translate("Actions", text); }

}  // namespace

std::span<const ActionInfo> action_table() { return kTable; }

Actions::Actions(QWidget* window) {
  for (const ActionInfo& info : kTable) {
    auto* action = new QAction(translated(info.text), window);
    action->setObjectName(QString::fromUtf8(info.id));
    action->setStatusTip(translated(info.help));
    action->setToolTip(translated(info.help));
    if (*info.icon) action->setIcon(QIcon::fromTheme(QString::fromUtf8(info.icon)));
    QKeySequence key(info.standard);
    if (key.isEmpty()) key = QKeySequence(QString::fromUtf8(info.shortcut));
    action->setShortcut(key);
    action->setCheckable(info.checkable);
    window->addAction(action);
    actions_[info.id] = action;
  }
}

void Actions::on(const char* id, std::function<void()> run) {
  QObject::connect((*this)[id], &QAction::triggered, (*this)[id], std::move(run));
}

QAction* Actions::operator[](const char* id) const {
  const auto at = actions_.find(id);
  assert(at != actions_.end());
  return at->second;
}

void Actions::addTo(QMenu* menu, std::initializer_list<const char*> ids) const {
  for (const char* id : ids) {
    if (*id) {
      menu->addAction((*this)[id]);
    } else {
      menu->addSeparator();
    }
  }
}

}  // namespace gazewright
