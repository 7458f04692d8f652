#include "app/window/shelf_panel.h"

#include <QFutureWatcher>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>
#include <QtConcurrent>
#include <algorithm>

#include "app/window/message_bar.h"
#include "app/window/shelf_list.h"
#include "app/window/widgets.h"

namespace gazewright {

ShelfPanel::ShelfPanel(const std::filesystem::path& folder, QWidget* parent)
    : QDialog(parent), folder_(folder) {
  setObjectName(QStringLiteral("shelf"));
  setWindowTitle(tr("Parts shelf"));
  setModal(false);
  pool_.setMaxThreadCount(1);  // one job after the other
  build();
  refreshButtons();
}

ShelfPanel::~ShelfPanel() { pool_.waitForDone(); }

void ShelfPanel::build() {
  filter_ = searchEdit(tr("Filter: words of the name or figures"), tr("Filter the parts"));
  filter_->setObjectName(QStringLiteral("shelf filter"));
  list_ = new ShelfList;
  list_->installEventFilter(this);
  problems_ = sentencesLabel(tr("Files of the shelf that were left out"));
  setKind(problems_, "problem");
  problems_->hide();
  note_ = quietLabel();
  note_->setObjectName(QStringLiteral("shelf note"));
  note_->setWordWrap(true);
  undo_ = textButton(tr("&Bring back"), tr("Undo the last removal or renaming on the shelf"),
                     QStringLiteral("shelf undo"));
  auto* bottom = new QHBoxLayout;
  bottom->addWidget(note_, 1);
  bottom->addWidget(undo_, 0, Qt::AlignTop);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(filter_);
  layout->addWidget(list_, 1);
  layout->addWidget(buttons());
  layout->addWidget(problems_);
  layout->addLayout(bottom);
  resize(640, 560);
  connect(filter_, &QLineEdit::textChanged, list_, &ShelfList::setFilter);
  connect(filter_, &QLineEdit::textChanged, this, &ShelfPanel::refreshButtons);
  connect(list_, &QTreeWidget::currentItemChanged, this, &ShelfPanel::refreshButtons);
  connect(list_, &QTreeWidget::itemDoubleClicked, this, [this] { putOn({}); });
  connect(list_, &ShelfList::nameTyped, this, &ShelfPanel::rename);
  connect(undo_, &QToolButton::clicked, this, &ShelfPanel::bringBack);
}

QWidget* ShelfPanel::buttons() {
  pan_ = textButton(tr("Put on &pan"), tr("Put the part in the place of pan's own"),
                    QStringLiteral("shelf pan"));
  tilt_ = textButton(tr("Put on &tilt"), tr("Put the part in the place of tilt's own"),
                     QStringLiteral("shelf tilt"));
  rename_ = textButton(tr("Re&name"), tr("Give the part another name (F2)"),
                       QStringLiteral("shelf rename"));
  remove_ = textButton(tr("&Remove"), tr("Take the part off the shelf (Delete)"),
                       QStringLiteral("shelf remove"));
  fit_ = textButton(tr("Which fits &best"),
                    tr("Rank every motor with every gearbox of the shelf for this rig"),
                    QStringLiteral("shelf fit"));
  auto* row = new QWidget;
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  for (QToolButton* each : {pan_, tilt_, rename_, remove_}) layout->addWidget(each);
  layout->addStretch();
  layout->addWidget(fit_);
  connect(pan_, &QToolButton::clicked, this, [this] { putOn(Axis::pan); });
  connect(tilt_, &QToolButton::clicked, this, [this] { putOn(Axis::tilt); });
  connect(rename_, &QToolButton::clicked, this, [this] {
    if (QTreeWidgetItem* row_item = list_->currentItem()) list_->editItem(row_item, 0);
  });
  connect(remove_, &QToolButton::clicked, this, &ShelfPanel::removeCurrent);
  connect(fit_, &QToolButton::clicked, this, &ShelfPanel::fitWanted);
  return row;
}

QString ShelfPanel::note() const { return note_->text(); }

const ShelfEntry* ShelfPanel::current() const {
  const auto entry = list_->current();
  return shelf_ && entry && *entry < shelf_->entries.size() ? &shelf_->entries[*entry] : nullptr;
}

void ShelfPanel::refreshButtons() {
  const ShelfEntry* entry = current();
  const bool is_of_rig = entry && !is_of_axis(entry->part.kind());
  pan_->setText(is_of_rig ? tr("Put on the ri&g") : tr("Put on &pan"));
  pan_->setEnabled(entry);
  tilt_->setEnabled(entry && !is_of_rig);
  const bool has_file = entry && !entry->file.empty();
  rename_->setEnabled(has_file);
  remove_->setEnabled(has_file);
  fit_->setEnabled(shelf_ && !shelf_->entries.empty());
  undo_->setVisible(static_cast<bool>(bring_back_));
}

void ShelfPanel::run(std::function<Outcome()> work) {
  ++jobs_;
  auto* watcher = new QFutureWatcher<Outcome>(this);
  connect(watcher, &QFutureWatcherBase::finished, this, [this, watcher] {
    --jobs_;
    done(watcher->result());
    watcher->deleteLater();
  });
  watcher->setFuture(QtConcurrent::run(&pool_, [work = std::move(work), folder = folder_] {
    Outcome outcome = work();
    outcome.shelf = std::make_shared<const Shelf>(load_shelf(folder));
    return outcome;
  }));
}

void ShelfPanel::done(const Outcome& outcome) {
  shelf_ = outcome.shelf;
  list_->setShelf(*shelf_);
  if (outcome.chosen) {
    const auto chosen = std::ranges::find(shelf_->entries, *outcome.chosen,
                                          [](const ShelfEntry& entry) { return entry.part.name; });
    if (chosen != shelf_->entries.end())
      list_->choose(static_cast<std::size_t>(chosen - shelf_->entries.begin()));
  }
  bring_back_ = outcome.bring_back;
  setKind(note_, outcome.fault ? "problem" : "note");
  note_->setText(outcome.fault ? sentence_of(*outcome.fault)
                 : outcome.note.isEmpty()
                     ? tr("Drag a part onto a drive line, or press Enter. Files: %1")
                           .arg(QString::fromStdString(folder_.string()))
                     : outcome.note);
  QStringList problems;
  for (const Diagnostic& problem : shelf_->problems)
    problems << QString::fromStdString(to_text(problem));
  problems_->setText(problems.mid(0, 6).join('\n'));
  problems_->setVisible(!problems.isEmpty());
  refreshButtons();
  emit shelfChanged();
}

void ShelfPanel::load() {
  run([folder = folder_] {
    Outcome outcome;
    outcome.fault = seed_shelf(folder);
    return outcome;
  });
}

void ShelfPanel::add(const ShelfPart& part) {
  run([folder = folder_, part] {
    Outcome outcome;
    if ((outcome.fault = seed_shelf(folder))) return outcome;
    const auto added = add_to_shelf(load_shelf(folder), part);
    if (const auto* fault = std::get_if<Diagnostic>(&added)) {
      outcome.fault = *fault;
      return outcome;
    }
    const auto entry = std::get<ShelfEntry>(added);
    outcome.chosen = entry.part.name;
    outcome.note = tr("“%1” is on the shelf now.").arg(QString::fromStdString(entry.part.name));
    return outcome;
  });
}

void ShelfPanel::rename(std::size_t entry, const QString& name) {
  if (!shelf_ || entry >= shelf_->entries.size()) return;
  const ShelfEntry before = shelf_->entries[entry];
  const std::string wanted = name.toStdString();
  if (wanted.empty() || wanted == before.part.name || before.file.empty()) {
    // The old name comes back, once the list is done with its editor.
    QTimer::singleShot(0, this, [this] { list_->setShelf(*shelf_); });
    return;
  }
  run([before, wanted] {
    Outcome outcome;
    outcome.fault = rename_on_shelf(before, wanted);
    if (outcome.fault) return outcome;
    ShelfEntry now = before;
    now.part.rename(wanted);
    outcome.chosen = wanted;
    outcome.note =
        tr("“%1” is called “%2” now.")
            .arg(QString::fromStdString(before.part.name), QString::fromStdString(wanted));
    outcome.bring_back = [now, old = before.part.name] { return rename_on_shelf(now, old); };
    return outcome;
  });
}

void ShelfPanel::removeCurrent() {
  const ShelfEntry* entry = current();
  if (!entry || entry->file.empty()) return;
  run([gone = *entry] {
    Outcome outcome;
    const auto removed = remove_from_shelf(gone);
    if (const auto* fault = std::get_if<Diagnostic>(&removed)) {
      outcome.fault = *fault;
      return outcome;
    }
    outcome.note = tr("“%1” is off the shelf.").arg(QString::fromStdString(gone.part.name));
    outcome.bring_back = [file = gone.file, text = std::get<std::string>(removed)] {
      return save_text(file, text);
    };
    return outcome;
  });
}

void ShelfPanel::bringBack() {
  if (!bring_back_) return;
  run([bring_back = bring_back_] {
    Outcome outcome;
    outcome.fault = bring_back();
    outcome.note = tr("It is back on the shelf as it was.");
    return outcome;
  });
}

void ShelfPanel::putOn(std::optional<Axis> axis) {
  if (const ShelfEntry* entry = current()) emit partWanted(axis, entry->part);
}

bool ShelfPanel::eventFilter(QObject* watched, QEvent* event) {
  if (watched == list_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter) {
      putOn({});
      return true;
    }
    if (key == Qt::Key_Delete) {
      removeCurrent();
      return true;
    }
  }
  return QDialog::eventFilter(watched, event);
}

}  // namespace gazewright
