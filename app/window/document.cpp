#include "app/window/document.h"

#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QUndoCommand>

#include "core/files/text_check.h"

namespace gazewright {
namespace {

/// What is in the file; nothing where it cannot be read.
std::optional<std::string> bytes_of(const QString& file) {
  QFile in(file);
  if (!in.open(QIODevice::ReadOnly)) return std::nullopt;
  return in.read(kLargestFile_bytes + 1).toStdString();
}

}  // namespace

/// The one kind of command: the rig before and after.
class EditRig : public QUndoCommand {
 public:
  EditRig(Document& document, const QString& what, const Rig& after, int dragId)
      : QUndoCommand(what),
        document_(document),
        before_(document.rig()),
        after_(after),
        drag_id_(dragId) {}
  void redo() override { document_.set(after_); }
  void undo() override { document_.set(before_); }
  int id() const override { return drag_id_; }
  bool mergeWith(const QUndoCommand* next) override {
    after_ = static_cast<const EditRig*>(next)->after_;
    setObsolete(after_ == before_);
    return true;
  }

 private:
  Document& document_;
  Rig before_, after_;
  int drag_id_;
};

Document::Document(QObject* parent) : QObject(parent) {
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
