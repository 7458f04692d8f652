#pragma once

#include <QDialog>
#include <QThreadPool>
#include <functional>
#include <memory>
#include <optional>

#include "core/shelf/shelf.h"

class QLabel;
class QLineEdit;
class QToolButton;

namespace gazewright {

class ShelfList;

/// The parts shelf: a window of its own beside the main one. Its folder is made, read and written
/// on a thread of its own, from the first time it is shown on.
class ShelfPanel : public QDialog {
  Q_OBJECT
 public:
  explicit ShelfPanel(const std::filesystem::path& folder, QWidget* parent = nullptr);
  ~ShelfPanel() override;

  void load();  ///< makes the folder where it is not there, and reads it again
  void add(const ShelfPart& part);
  void removeCurrent();
  void bringBack();  ///< undoes the last removal or rename

  const std::shared_ptr<const Shelf>& shelf() const { return shelf_; }  ///< null until it is read
  bool isBusy() const { return jobs_ > 0; }
  ShelfList& list() { return *list_; }
  QLineEdit& filter() { return *filter_; }
  QString note() const;  ///< what happened last

 signals:
  /// Without an axis: on the one whose card is shown.
  void partWanted(std::optional<gazewright::Axis> axis, const gazewright::ShelfPart& part);
  void fitWanted();
  void shelfChanged();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  /// What a job did.
  struct Outcome {
    std::optional<Diagnostic> fault;
    QString note;
    std::function<std::optional<Diagnostic>()> bring_back;
    std::optional<std::string> chosen;  ///< name of the part to go to
    std::shared_ptr<const Shelf> shelf;
  };
  void run(std::function<Outcome()> work);
  void done(const Outcome& outcome);
  void rename(std::size_t entry, const QString& name);
  void putOn(std::optional<Axis> axis);
  void build();
  QWidget* buttons();
  void refreshButtons();
  const ShelfEntry* current() const;

  std::filesystem::path folder_;
  std::shared_ptr<const Shelf> shelf_;
  std::function<std::optional<Diagnostic>()> bring_back_;
  int jobs_ = 0;
  ShelfList* list_;
  QLineEdit* filter_;
  QLabel *note_, *problems_;
  QToolButton *pan_, *tilt_, *rename_, *remove_, *fit_, *undo_;
  QThreadPool pool_;
};

}  // namespace gazewright
