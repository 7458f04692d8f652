#pragma once

#include <QDateTime>
#include <QLockFile>
#include <QObject>
#include <QString>
#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "core/files/journal.h"

namespace gazewright {

/// A journal whose window is gone. While this lives, no other window offers it.
struct Leftover {
  QString journal;  ///< its place
  QDateTime time;   ///< of the last edit in it
  QString file;     ///< that the edits belong to; empty: never saved
  std::string text;
  std::shared_ptr<QLockFile> claim;
};

/// The unsaved edits of one window's document, in a journal of the state folder, and the lock that
/// tells other windows that this one has the file. Lock and journal of a file are named by its path
/// (NAME.lock, NAME.journal), those of a document without a file by chance.
class KeptEdits : public QObject {
  Q_OBJECT
 public:
  /// Nothing is kept and nothing locked where `folder` is empty. Makes the folder when needed.
  explicit KeptEdits(const QString& folder, QObject* parent = nullptr);

  /// The document is another one now, or has another file. The journal before it goes.
  void follow(const QString& file);
  const std::optional<QString>& file() const { return file_; }  ///< empty: follows nothing yet
  bool isElsewhere() const { return is_elsewhere_; }            ///< another window has the file

  /// Returns at once; the journal is written on a thread of its own. @pre follows a document
  void keep(const Rig& rig, const std::string& original_text);
  void forget();  ///< the edits are saved or given up
  bool wait();    ///< until journals are as asked for; false: one could not be written

  /// The newest leftover that is wanted, those of `file` first. None is given twice while it is
  /// claimed. It leaves the name of its file, which is for the window that has that open.
  std::optional<Leftover> claimLeftover(const QString& file,
                                        const std::function<bool(const Leftover&)>& is_wanted);
  static void discard(const Leftover& leftover);

 signals:
  /// Edits are not being kept, and why. Once, until one is kept again. Sent on the writer's thread,
  /// so that a receiver of the window gets it in its event loop.
  void failed(const QString& reason);

 private:
  QString path(const QString& name, const char* ending) const;
  QLockFile::LockError take(const QString& name);
  void removeHalfWritten() const;
  std::optional<Leftover> claim(const QString& name) const;
  void tell(const std::optional<Diagnostic>& fault);

  QString folder_, name_;
  std::optional<QString> file_;
  std::unique_ptr<QLockFile> lock_;
  bool is_elsewhere_ = false, has_kept_ = false;
  std::atomic<bool> has_failed_ = false;
  JournalWriter writer_;  // last: it ends before what it tells goes
};

}  // namespace gazewright
