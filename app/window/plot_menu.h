#pragma once

#include <QMenu>
#include <QPointer>
#include <functional>

#include "app/plots/plot_view.h"
#include "app/window/picture_dialog.h"

namespace gazewright {

/// Everything that can be done with one plot. The same menu serves the window's menu bar, the
/// button of each plot and the right mouse button; it is filled when it opens.
class PlotMenu : public QMenu {
  Q_OBJECT
 public:
  using AskFile =
      std::function<QString(const QString& title, const QString& name, const QString& filter)>;

  explicit PlotMenu(QWidget* parent);

  /// Whose menu it is. `rig` is for captions; it may be null.
  void setPlot(PlotView* plot, const Rig* rig);
  PlotView* plot() const { return plot_; }
  QAction* action(const char* id) const;  ///< "copy_picture" ...; null where it is not offered
  /// For tests: instead of the dialog that asks for a file name.
  void setAskFile(AskFile ask) { ask_file_ = std::move(ask); }

  QString caption() const;
  void copyPicture() const;
  void askPicture();
  void savePicture(const PictureDialog::Choice& choice);
  void saveData(bool visible);
  void showTable();
  void showCursors();

 signals:
  void told(const QString& text, bool fault);

 private:
  void fill();
  void addView();
  void addLines();
  void addDifference();
  void addCursors();
  QAction* add(const char* id, const QString& text, const char* keys,
               const std::function<void()>& run);
  /// An entry that turns an option on and off.
  QAction* addCheck(const char* id, const QString& text, const char* keys,
                    bool PlotOptions::*option);
  void tell(const QString& file, const std::optional<Diagnostic>& fault);

  QPointer<PlotView> plot_;
  std::optional<Rig> rig_;  ///< for the caption
  AskFile ask_file_;
  PictureDialog::Choice picture_;
};

}  // namespace gazewright
