#include "app/window/kept_edits.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFileInfo>
#include <QUuid>

#include "app/window/message_bar.h"

namespace gazewright {
namespace {

constexpr const char* kJournal = ".journal";
constexpr const char* kLock = ".lock";

/// One name for a file, through whatever links it was reached.
QString name_for(const QString& file) {
  const QString real = QFileInfo(file).canonicalFilePath();
  const QByteArray path = (real.isEmpty() ? QFileInfo(file).absoluteFilePath() : real).toUtf8();
  return QString::fromLatin1(
      QCryptographicHash::hash(path, QCryptographicHash::Sha1).toHex().left(24));
}

QString name_by_chance() { return QUuid::createUuid().toString(QUuid::Id128); }

std::unique_ptr<QLockFile> lock_at(const QString& place) {
  auto lock = std::make_unique<QLockFile>(place);
  lock->setStaleLockTime(0);  // only the end of its process frees it, no lapse of time
  return lock;
}

}  // namespace

KeptEdits::KeptEdits(const QString& folder, QObject* parent)
    : QObject(parent),
      folder_(folder),
      writer_([this](const std::optional<Diagnostic>& fault) { tell(fault); }) {}

QString KeptEdits::path(const QString& name, const char* ending) const {
  return folder_ + '/' + name + QLatin1String(ending);
}

QLockFile::LockError KeptEdits::take(const QString& name) {
  auto lock = lock_at(path(name, kLock));
  if (!lock->tryLock(0)) return lock->error();
  name_ = name;
  lock_ = std::move(lock);
  return QLockFile::NoError;
}

void KeptEdits::follow(const QString& file) {
  forget();
  file_ = file;
  is_elsewhere_ = false;
  if (folder_.isEmpty()) return;
  writer_.wait();  // whoever takes the lock next finds no journal that is on its way out
  lock_.reset();
  QDir().mkpath(folder_);
  QFile::setPermissions(folder_, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
  const auto fault = file.isEmpty() ? QLockFile::UnknownError : take(name_for(file));
  is_elsewhere_ = fault == QLockFile::LockFailedError;
  if (fault == QLockFile::NoError) {
    // What a window that is gone left: nobody's until it is restored, so that new edits of the
    // same file do not replace it.
    QFile::rename(path(name_, kJournal), path(name_by_chance(), kJournal));
    return;
  }
  name_ = name_by_chance();  // taken with the first edit
}

void KeptEdits::keep(const Rig& rig, const std::string& original_text) {
  if (folder_.isEmpty() || !file_) return;
  if (!lock_) take(name_);
  has_kept_ = true;
  writer_.keep(path(name_, kJournal).toStdString(), {file_->toStdString(), rig, original_text});
}

void KeptEdits::forget() {
  if (has_kept_) writer_.remove(path(name_, kJournal).toStdString());
  has_kept_ = false;
}

bool KeptEdits::wait() { return writer_.wait(); }

std::optional<Leftover> KeptEdits::claim(const QString& name) const {
  std::shared_ptr<QLockFile> lock = lock_at(path(name, kLock));
  if (!lock->tryLock(0)) return std::nullopt;
  QFile in(path(name, kJournal));
  if (!in.open(QIODevice::ReadOnly)) return std::nullopt;
  auto journal = read_journal(in.readAll().toStdString());
  if (!journal) return std::nullopt;
  Leftover leftover{in.fileName(), QFileInfo(in).lastModified(),
                    QString::fromStdString(journal->file), std::move(journal->text), lock};
  in.close();
  if (leftover.file.isEmpty() || name != name_for(leftover.file)) return leftover;
  const QString other = name_by_chance();
  std::shared_ptr<QLockFile> other_lock = lock_at(path(other, kLock));
  if (!other_lock->tryLock(0) || !QFile::rename(leftover.journal, path(other, kJournal)))
    return leftover;
  leftover.journal = path(other, kJournal);
  leftover.claim = std::move(other_lock);
  return leftover;
}

std::optional<Leftover> KeptEdits::claimLeftover(
    const QString& file, const std::function<bool(const Leftover&)>& is_wanted) {
  if (folder_.isEmpty()) return std::nullopt;
  removeHalfWritten();
  std::optional<Leftover> found;
  const QDir folder(folder_);
  for (const QFileInfo& entry :
       folder.entryInfoList({QStringLiteral("*.journal")}, QDir::Files, QDir::Time)) {
    if (entry.completeBaseName() == name_) continue;
    auto leftover = claim(entry.completeBaseName());
    if (!leftover || !is_wanted(*leftover)) continue;
    const bool isOfFile = !file.isEmpty() && leftover->file == file;
    if (isOfFile || !found) found = std::move(leftover);
    if (isOfFile) break;
  }
  return found;
}

/// A kill within a write leaves a part beside the whole journal; one of yesterday is nobody's.
void KeptEdits::removeHalfWritten() const {
  const QDateTime yesterday = QDateTime::currentDateTime().addDays(-1);
  for (const QFileInfo& entry :
       QDir(folder_).entryInfoList({QStringLiteral(".saving-*")}, QDir::Files | QDir::Hidden)) {
    if (entry.lastModified() < yesterday) QFile::remove(entry.filePath());
  }
}

void KeptEdits::discard(const Leftover& leftover) { QFile::remove(leftover.journal); }

void KeptEdits::tell(const std::optional<Diagnostic>& fault) {
  if (has_failed_.exchange(fault.has_value()) || !fault) return;
  emit failed(sentence_of(*fault));
}

}  // namespace gazewright
