#include "app/window/document.h"

#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QUndoCommand>
#include <memory>
#include <utility>

#include "core/files/text_check.h"
#include "core/rig/rig_change.h"

namespace gazewright {
namespace {

constexpr int kMostSteps = 1000;

/// What is in the file; nothing where it cannot be read.
std::optional<std::string> bytes_of(const QString& file) {
  QFile in(file);
  if (!in.open(QIODevice::ReadOnly)) return std::nullopt;
  return in.read(kLargestFile_bytes + 1).toStdString();
}

}  // namespace

/// The one kind of command: from one rig to the next. While it may still take further frames of a
/// drag it has both rigs; settled, it keeps what it changed.
class EditRig : public QUndoCommand {
 public:
  EditRig(Document& document, const QString& what, const Rig& after, int dragId)
      : QUndoCommand(what),
        document_(document),
        rigs_(std::make_unique<std::pair<Rig, Rig>>(document.rig(), after)),
        drag_id_(dragId) {}

  void redo() override { document_.set(rigs_ ? rigs_->second : change_->redone(document_.rig())); }
  void undo() override { document_.set(rigs_ ? rigs_->first : change_->undone(document_.rig())); }
  int id() const override { return drag_id_; }
  bool mergeWith(const QUndoCommand* next) override {
    if (!rigs_) return false;
    rigs_->second = static_cast<const EditRig*>(next)->rigs_->second;
    setObsolete(rigs_->first == rigs_->second);
    return true;
  }
  /// Changes how the step is kept, not what it does.
  void settle() const {
    if (!rigs_) return;
    change_.emplace(rigs_->first, rigs_->second);
    rigs_.reset();
  }

 private:
  Document& document_;
  mutable std::unique_ptr<std::pair<Rig, Rig>> rigs_;  ///< before and after; empty: settled
  mutable std::optional<RigChange> change_;            ///< once settled
  int drag_id_;
};

Document::Document(QObject* parent) : QObject(parent) {
  history_.setUndoLimit(kMostSteps);
  connect(&history_, &QUndoStack::cleanChanged, this, &Document::fileChanged);
}

QString Document::shownName() const {
  if (!file_.isEmpty()) return QFileInfo(file_).fileName();
  QString name = QString::fromStdString(rig_.title).toLower();
  static const QRegularExpression others(QStringLiteral("[^\\p{L}\\p{N}]+"));
  name.replace(others, QStringLiteral("-"));
  while (name.startsWith('-')) name.remove(0, 1);
  while (name.endsWith('-')) name.chop(1);
  return (name.isEmpty() ? tr("untitled") : name) + QStringLiteral(".rig.yaml");
}

void Document::edit(const QString& what, const Rig& after, int dragId) {
  if (after == rig_) return;
  const int last = history_.index() - 1;
  if (last >= 0 && (dragId == -1 || history_.command(last)->id() != dragId))
    static_cast<const EditRig*>(history_.command(last))->settle();
  history_.push(new EditRig(*this, what, after, dragId));
}

int Document::newDragId() {
  static int last = 0;
  return ++last;
}

void Document::set(const Rig& rig) {
  rig_ = rig;
  emit rigChanged();
}

void Document::replace(const Rig& rig, const QString& file, std::string text, bool unsaved) {
  history_.clear();
  file_ = file;
  text_ = std::move(text);
  on_disk_ = text_;
  unsaved_ = unsaved;
  set(rig);
  emit fileChanged();
}

void Document::startWith(const Rig& rig, bool unsaved, std::string text) {
  replace(rig, {}, std::move(text), unsaved);
}

std::vector<Diagnostic> Document::open(const QString& file) {
  LoadedRig loaded = load_rig(file.toStdString());
  if (loaded.rig) {
    replace(*loaded.rig, QFileInfo(file).absoluteFilePath(), std::move(loaded.text), false);
  }
  return loaded.diagnostics;
}

std::vector<Diagnostic> Document::openAsNew(const QString& file) {
  LoadedRig loaded = load_rig(file.toStdString());
  if (loaded.rig) replace(*loaded.rig, {}, std::move(loaded.text), false);
  return loaded.diagnostics;
}

std::optional<Diagnostic> Document::save(const QString& file) {
  std::string text = write_rig(rig_, text_);
  if (auto fault = save_text(file.toStdString(), text)) return fault;
  file_ = QFileInfo(file).absoluteFilePath();
  text_ = std::move(text);
  on_disk_ = text_;
  unsaved_ = false;
  history_.setClean();
  emit fileChanged();
  return std::nullopt;
}

Document::OnDisk Document::onDisk() const {
  if (file_.isEmpty()) return OnDisk::same;
  if (!QFileInfo::exists(file_)) return OnDisk::gone;
  const auto bytes = bytes_of(file_);
  return !bytes || *bytes == on_disk_ ? OnDisk::same : OnDisk::changed;
}

std::vector<Diagnostic> Document::reload() {
  LoadedRig loaded = load_rig(file_.toStdString());
  if (!loaded.rig) return loaded.diagnostics;
  edit(tr("reload of the file"), *loaded.rig);
  text_ = std::move(loaded.text);
  on_disk_ = text_;
  unsaved_ = false;
  history_.setClean();
  emit fileChanged();
  return loaded.diagnostics;
}

void Document::keepMine() {
  on_disk_ = bytes_of(file_).value_or(on_disk_);
  unsaved_ = true;
  emit fileChanged();
}

void Document::leaveFile() {
  file_.clear();
  unsaved_ = true;
  emit fileChanged();
}

}  // namespace gazewright
