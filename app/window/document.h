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
  QUndoStack& history() { return history_; }
  bool isModified() const { return !history_.isClean() || unsaved_; }

  /// One undoable step; `what` names it in the Edit menu. Steps with the same dragId (not -1) that
  /// follow each other become one. Nothing happens where `after` equals the present rig.
  void edit(const QString& what, const Rig& after, int dragId = -1);
  static int newDragId();

  /// A rig without a file, history empty. `unsaved`: closing asks whether to keep it.
  void startWith(const Rig& rig, bool unsaved);
  /// Reads a file. Where it has an error the present rig stays. Returns all diagnostics.
  std::vector<Diagnostic> open(const QString& file);
  /// The same with the rig of the file under no name of its own, for samples.
  std::vector<Diagnostic> openAsNew(const QString& file);
  /// Writes the rig and makes `file` the document's file. Empty: done; else nothing changed.
  std::optional<Diagnostic> save(const QString& file);

 signals:
  void rigChanged();
  void fileChanged();  ///< the file's name or the modified state

 private:
  friend class EditRig;
  void set(const Rig& rig);
  void replace(const Rig& rig, const QString& file, std::string text, bool unsaved);

  Rig rig_;
  QString file_;
  std::string text_;
  bool unsaved_ = false;
  QUndoStack history_;
};

}  // namespace gazewright
