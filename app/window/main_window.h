#pragma once

#include <QMainWindow>
#include <QPointer>
#include <QTimer>
#include <array>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "app/plots/plot_view.h"
#include "app/plots/theme.h"
#include "app/window/actions.h"
#include "app/window/document.h"
#include "app/window/doubt_work.h"
#include "app/window/guide.h"
#include "app/window/recompute.h"
#include "app/window/settings.h"

class QLabel;
class QPrinter;
class QSplitter;

namespace gazewright {

class Card;
class DesktopTheme;
class DoubtsDialog;
class DriveSettingsDialog;
class DrawingPanel;
class DriveLine;
class Explainer;
struct DialMove;
class FindingsView;
struct HandleMove;
class FitDialog;
class MovePlayer;
class GuideStrip;
class EmptyNote;
class MessageBar;
class MissingBar;
class MoveLimitsDialog;
class PlotsPanel;
class ShelfPanel;
struct FitRow;
struct SheetContent;
struct Shelf;
struct ShelfPart;
class VariantsDesk;
class QuestionBar;
class TravelDial;
class SafeWork;
class SettingsWindow;

struct WindowSetup {
  QString settings_file;  ///< empty: the user's own
  QString theme;          ///< "light", "dark", "contrast", "desktop"; empty: as remembered
  int text_percent = 0;   ///< of the desktop's font; 0: as remembered
  bool remember = true;   ///< keep layout and recent files when closing
};

/// The window: one rig, its analysis, and everything that edits it. It shows an Analysis and
/// computes nothing.
class MainWindow : public QMainWindow {
  Q_OBJECT
 public:
  explicit MainWindow(const WindowSetup& setup = {});
  ~MainWindow() override;

  // Files. Faults are told in the message bar; nothing changes then.
  void openFirst();  ///< the first sample, or a new rig where there is none
  bool openFile(const QString& file);
  void openOrStartBlank(const QString& file);  ///< a new rig under the list of what to mend
  bool openSample(const QString& file);
  void newRig();
  bool saveTo(const QString& file);
  /// Writes the design sheet as soon as the figures are up to date.
  void writeSheet(const QString& file);
  /// Prints it likewise, on a printer that is set up.
  void printSheet(const std::shared_ptr<QPrinter>& printer);

  void select(const QString& part);
  QString selected() const { return selected_; }
  void setThemeName(const QString& name);
  void setTextPercent(int percent);
  void setPreferences(const Preferences& preferences);  ///< counts at once, and is remembered
  const Preferences& preferences() const { return preferences_; }
  void setPlotCursor(double time_s);

  Document& document() { return document_; }
  Recompute& recompute() { return recompute_; }
  const Actions& actions() const { return actions_; }
  Card& card() { return *card_; }
  DrawingPanel& drawing() { return *drawing_; }
  DriveLine& driveLine(Axis axis) { return *lines_[static_cast<std::size_t>(axis)]; }
  FindingsView& findings() { return *findings_; }
  MessageBar& messages() { return *messages_; }
  PlotsPanel& plots() { return *plots_; }
  ShelfPanel& shelf();                       ///< made when first asked for
  FitDialog* fits() const { return fits_; }  ///< null until it was shown
  VariantsDesk& variants() { return *variants_; }
  DoubtsDialog* doubtsDialog() const { return doubts_dialog_; }  ///< null until it was shown
  MoveLimitsDialog* moveLimits() const { return move_limits_; }  ///< null until it was shown
  DriveSettingsDialog* driveSettings() const { return drive_settings_; }  ///< null until shown
  /// Of the analysis that is shown; null: not there, or something is dragged.
  std::shared_ptr<const Doubts> doubts() const;
  bool areDoubtsAwaited() const { return doubt_work_.isAwaited(); }
  QuestionBar& questions() { return *questions_; }
  SafeWork& safeWork() { return *safe_; }
  SettingsWindow* settingsWindow() const { return settings_window_; }  ///< null until shown
  Explainer& explainer() { return *explainer_; }
  GuideStrip& guide() { return *guide_; }
  MissingBar& missing() { return *missing_; }
  EmptyNote& drawingNote() { return *no_bodies_; }
  bool isDragging() const { return dragging_; }
  bool showsUpdating() const;  ///< the badge is on

 signals:
  void sheetWritten(const QString& file);

 protected:
  void showEvent(QShowEvent* event) override;
  void closeEvent(QCloseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  // main_window.cpp: what there is and where
  void build();
  void connectParts();
  void fitPlace();
  void togglePlace();
  void restoreLayout();
  void storeLayout();
  void applyTheme();
  int cardWidth() const;
  // main_window_settings.cpp
  void connectSettings();
  void stepText(int by);
  void applyTextSize();
  void showSettings();
  void restoreDefaults();
  void resetLayout();
  MessageBar& noticePlace();  ///< where the user looks
  // main_window_results.cpp: from the rig to the screen
  void rigChanged();
  void behindChanged();
  void showAnalysis();
  void showSweep(Axis axis);
  void feedPlots();
  void dimFigures(bool dimmed);
  void moveRatio(Axis axis, double ratio, int dragId);
  void startDrag();
  void endDrag();
  void applyRemedy(const Remedy& remedy);
  void stepPart(int by);
  // main_window_dials.cpp: the marks of the travel dials
  void connectDials();
  void showMarks();
  void moveMark(const DialMove& move);
  void startDialDrag();
  void takeDialDragBack();
  void typeField(const QString& path);
  void connectVariants();  // main_window_variants.cpp
  // main_window_doubts.cpp: how far to trust the figures
  void connectDoubts();
  void showDoubtsDialog();
  void wantDoubts();
  void doubtsChanged();
  // main_window_limits.cpp: what limits the moves
  void showMoveLimits();
  void fillMoveLimits();
  // main_window_drive_settings.cpp: what to set in the drives
  void showDriveSettings();
  void feedDriveSettings();
  // main_window_drawing.cpp: the drawing's handles, and the move played
  void connectDrawing();
  void moveHandle(const HandleMove& move);
  void playMove(bool slowly);
  void addCounterweight();
  // main_window_files.cpp: open, save, close
  bool mayLeaveRig();
  bool save();
  bool saveAs();
  void askOpen();
  void askSheet();
  void askPrint();
  QString askExport(const QString& title, const QString& name, const QString& filter);
  void rememberFile(const QString& file);
  bool openFile(const QString& file, const QString& otherwise);
  void tellOpened(const QString& file, const std::vector<Diagnostic>& diagnostics,
                  const QString& fault);
  void makeSheet(std::function<void(const SheetContent&)> use);
  void writeWaitingSheet();
  void updateTitle();
  // main_window_drop.cpp: what becomes of a dropped file
  void takePath(const QString& file);
  void takePart(const QString& file);
  // main_window_safety.cpp: journal, locks, changes on disk
  void buildSafety();
  // main_window_menus.cpp: what the actions do
  void buildMenus();
  void connectPlots();
  void connectRigActions();
  void connectShowActions();
  void fillRecent(QMenu* menu);
  void fillSamples(QMenu* menu);
  void updateUndoTexts();
  // main_window_help.cpp: why, help, first steps
  void connectHelp();
  void updateGuide();
  void updateEmptyViews();
  void goToStep(GuideStep step);
  void addBody(bool on_tilt);
  void addKeepOut();
  void showAbout();
  void showTip();

  // main_window_shelf.cpp: the parts shelf
  void connectShelf();
  void showShelf();
  void putOn(Axis axis, const ShelfPart& part);
  void keepSelectedPart();
  void showFits();
  void rankShelf();
  void tryFit(const FitRow& row, const Shelf& ranked);
  void readStock();
  void useShelf(const std::shared_ptr<const Shelf>& shelf);

  struct Layout {
    QByteArray window, middle, whole;
    std::vector<PlotKind> plots;
  };

  Document document_;
  Recompute recompute_;
  DoubtWork doubt_work_;
  Settings settings_;
  Actions actions_;
  WindowSetup setup_;
  DesktopTheme* desktop_;
  Preferences preferences_;
  Theme theme_;
  std::vector<QPointer<TravelDial>> dials_;
  QString selected_;
  std::function<void(const SheetContent&)> waiting_sheet_;  ///< what is to be done with it
  std::shared_ptr<const Analysis> shown_, ghost_;
  std::shared_ptr<const Doubts> drawn_doubts_;  ///< keeps what the plots' input points to
  Rig before_drag_;
  int dial_drag_id_ = -1;
  bool dragging_ = false, narrow_ = false, card_in_place_ = true;

  ShelfPanel* shelf_ = nullptr;
  FitDialog* fits_ = nullptr;
  DoubtsDialog* doubts_dialog_ = nullptr;
  MoveLimitsDialog* move_limits_ = nullptr;
  DriveSettingsDialog* drive_settings_ = nullptr;
  SettingsWindow* settings_window_ = nullptr;
  std::optional<std::vector<double>> stock_;  ///< ratios of the shelf; empty: not read yet
  bool rank_waits_ = false;                   ///< for the shelf to be read
  int fit_drag_id_ = -1;

  QLabel* badge_;
  QTimer dim_timer_;
  MessageBar* messages_;
  QuestionBar* questions_;
  std::unique_ptr<SafeWork> safe_;
  std::array<DriveLine*, 2> lines_;
  Card* card_;
  DrawingPanel* drawing_;
  MovePlayer* player_;
  PlotsPanel* plots_;
  FindingsView* findings_;
  VariantsDesk* variants_;
  GuideStrip* guide_;
  MissingBar* missing_;
  EmptyNote* no_bodies_;
  Explainer* explainer_ = nullptr;
  std::optional<Rig> sample_;  ///< the rig as the sample has it, while it is one that is open
  bool sheet_made_ = false;    ///< of this rig
  QSplitter *middle_, *whole_;
};

}  // namespace gazewright
