#include "app/window/safe_work.h"

#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <algorithm>
#include <utility>

#include "app/window/document.h"
#include "app/window/edits.h"
#include "app/window/question_bar.h"

namespace gazewright {
namespace {

constexpr int kMostOffered = 3;  // at once, so that the window keeps its room

QString key_of(const QString& journal) { return QStringLiteral("leftover ") + journal; }
const QString kDisk = QStringLiteral("on disk");
const QString kElsewhere = QStringLiteral("elsewhere");

QString first_words(const std::vector<Diagnostic>& diagnostics) {
  return diagnostics.empty() ? QString()
                             : QString::fromStdString(to_text(diagnostics.front())).trimmed();
}

/// "14:02", with its day where that is not today.
QString shown_time(const QDateTime& time) {
  const QLocale locale;
  return time.date() == QDate::currentDate() ? locale.toString(time.time(), QLocale::ShortFormat)
                                             : locale.toString(time, QLocale::ShortFormat);
}

}  // namespace

SafeWork::SafeWork(Document& document, QuestionBar& questions, const QString& folder, Window window)
    : document_(document),
      questions_(questions),
      window_(std::move(window)),
      keeps_(!folder.isEmpty()),
      kept_(folder) {
  connect(&document_.history(), &QUndoStack::indexChanged, this, &SafeWork::keep);
  connect(&document_, &Document::fileChanged, this, [this] {
    if (started_) follow();
    keep();
  });
  connect(&watch_, &FileWatch::touched, this, &SafeWork::lookAtDisk);
  connect(&kept_, &KeptEdits::failed, this, [this](const QString& reason) {
    window_.fault(tr("Edits are not kept safe from a crash: save often. %1").arg(reason));
  });
}

void SafeWork::start() {
  if (started_ || !keeps_) return;
  started_ = true;
  follow();
  offerLeftovers();
}

void SafeWork::follow() {
  const QString file = document_.file();
  if (kept_.file() == file) return;
  kept_.follow(file);
  watch_.setFile(file);
  questions_.withdraw(kDisk);
  questions_.withdraw(kElsewhere);
  if (kept_.isElsewhere()) tellElsewhere();
  if (!file.isEmpty()) offerThoseOf(file);
}

void SafeWork::keep() {
  if (!keeps_ || dragging_) return;
  if (!document_.isModified()) {
    if (!restored_.isEmpty()) window_.withdraw(std::exchange(restored_, {}));
    return kept_.forget();
  }
  follow();
  kept_.keep(document_.rig(), document_.originalText());
}

void SafeWork::setDragging(bool on) {
  if (std::exchange(dragging_, on) && !on) keep();
}

bool SafeWork::keepNow() {
  dragging_ = false;
  keep();
  return kept_.wait();
}

bool SafeWork::wait() { return kept_.wait(); }

void SafeWork::close() { kept_.forget(); }

void SafeWork::tellElsewhere() {
  questions_.ask(
      kElsewhere,
      tr("%1 is open in another window too: whoever saves last replaces what the other saved.")
          .arg(document_.shownName()),
      {{tr("Work on a copy"), tr("Leave that file alone; this rig gets a file when it is saved"),
        [this] { document_.leaveFile(); }}});
}

void SafeWork::lookAtDisk() {
  const QString name = document_.shownName();
  switch (document_.onDisk()) {
    case Document::OnDisk::same:
      return questions_.withdraw(kDisk);
    case Document::OnDisk::gone:
      return questions_.ask(kDisk, tr("%1 was moved or removed by another program.").arg(name),
                            {{tr("Save it again"), tr("Write the rig to that place anew"),
                              [this] { window_.save(document_.file()); }}});
    case Document::OnDisk::changed:
      return askAboutDisk(tr("%1 was changed by another program.").arg(name));
  }
}

void SafeWork::askAboutDisk(const QString& text) {
  questions_.ask(kDisk, text,
                 {{tr("Reload"), tr("Take what is in the file now; undo brings this rig back"),
                   [this] { reload(); }},
                  {tr("Keep mine"), tr("Go on with this rig; saving replaces what is in the file"),
                   [this] { document_.keepMine(); }}});
}

void SafeWork::reload() {
  const auto diagnostics = document_.reload();
  if (document_.onDisk() == Document::OnDisk::same) return;
  window_.fault(tr("Not reloaded; the rig here is unchanged. %1").arg(first_words(diagnostics)));
}

bool SafeWork::maySave(const QString& file) {
  const bool isOther = QFileInfo(file).absoluteFilePath() != document_.file();
  if (isOther || document_.onDisk() != Document::OnDisk::changed) return true;
  askAboutDisk(tr("Not saved: %1 was changed by another program since it was read. Keep mine, then "
                  "save, to replace that.")
                   .arg(document_.shownName()));
  return false;
}

void SafeWork::offerLeftovers() {
  offered_.clear();
  offerMore();
}

void SafeWork::offerMore() {
  const auto is_asked = [&](const QString& journal) { return questions_.asks(key_of(journal)); };
  while (std::ranges::count_if(offered_, is_asked) < kMostOffered) {
    auto found = kept_.claimLeftover(document_.file(), [&](const Leftover& leftover) {
      return !offered_.contains(leftover.journal);
    });
    if (!found) return;
    offer(std::make_shared<Leftover>(std::move(*found)));
  }
}

/// Also what was put off: now it matters.
void SafeWork::offerThoseOf(const QString& file) {
  while (auto found = kept_.claimLeftover(
             file, [&](const Leftover& leftover) { return leftover.file == file; })) {
    offer(std::make_shared<Leftover>(std::move(*found)));
  }
}

void SafeWork::offer(const std::shared_ptr<Leftover>& leftover) {
  const LoadedRig read = parse_rig(leftover->text, leftover->journal.toStdString());
  const bool isOpen = !leftover->file.isEmpty() && leftover->file == document_.file();
  if (isOpen && read.rig == document_.rig()) {  // killed after saving: nothing is lost
    return KeptEdits::discard(*leftover);
  }
  offered_.insert(leftover->journal);
  const QString time = shown_time(leftover->time);
  const QString title = read.rig ? QString::fromStdString(read.rig->title) : QString();
  QString text = leftover->file.isEmpty()
                     ? tr("Unsaved edits of %1 were found, of a rig without a file: “%2”.")
                           .arg(time, title.isEmpty() ? tr("no title") : title)
                     : tr("Unsaved edits of %1 were found, of %2.")
                           .arg(time, QDir::toNativeSeparators(leftover->file));
  if (QFileInfo(leftover->file).lastModified() > leftover->time) {
    text += ' ' + tr("The file was changed after them.");
  }
  questions_.ask(key_of(leftover->journal), text,
                 {{tr("Restore"), tr("Open them as one step that can be undone; nothing is saved"),
                   [this, leftover] { restore(*leftover); }},
                  {tr("Discard"), tr("Delete them for good"), [this, leftover] {
                     KeptEdits::discard(*leftover);
                     offerMore();
                   }}});
}

void SafeWork::restore(const Leftover& leftover) {
  const LoadedRig read = parse_rig(leftover.text, leftover.journal.toStdString());
  if (!read.rig) {
    window_.fault(tr("The edits cannot be read; they stay in their file. %1")
                      .arg(first_words(read.diagnostics)));
    return;
  }
  const bool hasFile = !leftover.file.isEmpty() && QFileInfo::exists(leftover.file);
  if (!hasFile || leftover.file != document_.file()) {
    if (!window_.may_leave()) return offer(std::make_shared<Leftover>(leftover));
    if (!hasFile || !window_.open(leftover.file)) {
      document_.startWith(blank_rig(), false, leftover.text);
    }
  }
  document_.edit(tr("restored edits"), *read.rig);
  if (!keepNow()) return;  // the only copy on disk is still the leftover
  KeptEdits::discard(leftover);
  restored_ = tr("The edits of %1 are restored, but not saved yet.").arg(shown_time(leftover.time));
  window_.notice(restored_);
  offerMore();
}

}  // namespace gazewright
