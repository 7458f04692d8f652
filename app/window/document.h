#pragma once

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <optional>
#include <vector>

#include "core/files/rig_file.h"
#include "core/rig/rig.h"

namespace gazewright {

/// The rig being edited: a plain value, the file it belongs to, the text of that file as last read
/// or written, and the undo history. Everything that changes the rig goes through edit().
class Document : public QObject {
  Q_OBJECT
 public:
  explicit Document(QObject* parent = nullptr);

  const Rig& rig() const { return rig_; }
  QString file() const { return file_; }  ///< empty: not saved yet
  /// File name; for a rig without a file one made of its title, "tide-pool-owl.rig.yaml".
  QString shownName() const;
  QUndoStack& history() { return history_; }  ///< the last 1000 steps
  bool isModified() const { return !history_.isClean() || unsaved_; }

  /// One undoable step; `what` names it in the Edit menu. Steps with the same dragId (not -1) that
  /// follow each other become one. Nothing happens where `after` equals the present rig.
  void edit(const QString& what, const Rig& after, int dragId = -1);
  static int newDragId();

  /// A rig without a file, history empty. `unsaved`: closing asks whether to keep it. `text`: whose
  /// comments and layout it is saved with.
  void startWith(const Rig& rig, bool unsaved, std::string text = {});
  /// Reads a file. Where it has an error the present rig stays. Returns all diagnostics.
  std::vector<Diagnostic> open(const QString& file);
  /// The same with the rig of the file under no name of its own, for samples.
  std::vector<Diagnostic> openAsNew(const QString& file);
  /// Writes the rig and makes `file` the document's file. Empty: done; else nothing changed.
  std::optional<Diagnostic> save(const QString& file);

  /// The file as it was last read or written, or the sample it began with.
  const std::string& originalText() const { return text_; }
  enum class OnDisk { same, changed, gone };
  /// What other programs did to the file since it was read, written or looked at by keepMine().
  /// Reads it; a document without a file is the same.
  OnDisk onDisk() const;
  /// Takes the file as it is now, as one undoable step. Where it has an error nothing changes.
  std::vector<Diagnostic> reload();
  /// What is in the file now is no news any more; the rig here counts as unsaved.
  void keepMine();
  /// The same rig without a file, unsaved.
  void leaveFile();

 signals:
  void rigChanged();
  void fileChanged();  ///< the file's name or the modified state

 private:
  friend class EditRig;
  void set(const Rig& rig);
  void replace(const Rig& rig, const QString& file, std::string text, bool unsaved);

  Rig rig_;
  QString file_;
  std::string text_, on_disk_;
  bool unsaved_ = false;
  QUndoStack history_;
};

}  // namespace gazewright
