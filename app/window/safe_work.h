#pragma once

#include <QObject>
#include <QString>
#include <functional>
#include <memory>
#include <set>

#include "app/window/file_watch.h"
#include "app/window/kept_edits.h"

namespace gazewright {

class Document;
class QuestionBar;

/// Keeps the window's work safe: every edit goes to a journal, what a killed window left is
/// offered, and a file that others change or have open is noticed. Nothing is merged and nothing
/// overwritten without an answer.
class SafeWork : public QObject {
  Q_OBJECT
 public:
  /// What it asks of the window.
  struct Window {
    std::function<bool()> may_leave;  ///< asks about unsaved edits; false: stay with this rig
    std::function<bool(const QString&)> open, save;
    std::function<void(const QString&)> notice, fault, withdraw;  ///< the last: a notice
  };

  /// @param folder  for journals and locks; empty: neither is made
  SafeWork(Document& document, QuestionBar& questions, const QString& folder, Window window);

  /// Once the window is up: locks, watches and looks for leftovers.
  void start();
  void setDragging(bool on);  ///< the frames of a drag are not kept, its end is
  /// False, with a question, where saving would write over what another program wrote.
  bool maySave(const QString& file);
  bool keepNow();  ///< the edits of a drag too; waits until the journal is written
  bool wait();     ///< until what was asked for so far is written; false: it could not be
  void close();    ///< the edits are saved or given up
  /// Of windows that are gone: a question for each, a few at once, the open file's first.
  void offerLeftovers();

 private:
  void follow();
  void keep();
  void lookAtDisk();
  void askAboutDisk(const QString& text);
  void reload();
  void tellElsewhere();
  void offerMore();
  void offerThoseOf(const QString& file);
  void offer(const std::shared_ptr<Leftover>& leftover);
  void restore(const Leftover& leftover);

  Document& document_;
  QuestionBar& questions_;
  Window window_;
  bool keeps_, started_ = false, dragging_ = false;
  KeptEdits kept_;
  std::set<QString> offered_;  ///< journals; what was put off is not asked about again
  QString restored_;           ///< the notice about what is not saved yet
  FileWatch watch_;
};

}  // namespace gazewright
