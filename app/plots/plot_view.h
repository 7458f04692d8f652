#pragma once

#include <QElapsedTimer>
#include <QWidget>
#include <array>
#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "app/plots/plot_options.h"
#include "app/plots/theme.h"
#include "core/analysis/analysis.h"
#include "core/analysis/doubts.h"
#include "core/analysis/reach.h"
#include "core/analysis/sweep.h"
#include "core/files/rig_file.h"

/// The plots of the window. Each shows an Analysis and computes nothing.
namespace gazewright {

class ChartPlot;
class ViewHistory;

enum class PlotKind {
  step,
  time_ratio,
  torque_speed,
  speed,
  current,
  both,
  bode,
  travel,
  travel_speed,
  reach,
  inertia,
  profiles,
  tracking,
  eye_time,
  eye_speed,
  heat,
  bus,
  gravity,
  margins,
  pointing
};

/// Every kind in the order of the list that the window offers.
const std::vector<PlotKind>& plot_kinds();
bool is_chart(PlotKind kind);  ///< one that chart_of makes; others paint themselves
QString plot_title(PlotKind kind);
QString plot_key(PlotKind kind);  ///< for settings and file names: "step", "time-ratio" ...
std::optional<PlotKind> plot_kind(const QString& key);

/// A variant of the rig that is laid under the present design.
struct VariantCurves {
  QString name;
  const Analysis* analysis;  ///< never null
  const Rig* rig = nullptr;  ///< for its place among ratios
};

/// What a plot shows. Null pointers are allowed: the plot then says in words what it waits for.
/// Nothing is kept after the call: a plot copies what it draws.
struct PlotInput {
  const Rig* rig = nullptr;
  const Analysis* now = nullptr;
  const Analysis* ghost = nullptr;                    ///< before the drag, drawn dashed
  const std::array<RatioSweep, 2>* sweeps = nullptr;  ///< by Axis
  const std::array<RatioSweep, 2>* ghost_sweeps = nullptr;
  const ReachMap* reach = nullptr;
  bool reach_waits = false;                   ///< the map is that of before the drag
  std::optional<Axis> only{};                 ///< show one axis; empty: both
  std::span<const VariantCurves> variants{};  ///< four at most are drawn
  std::span<const double> stock{};  ///< ratios of the gearboxes at hand; empty: the usual ones
  bool fixed_scale = false;         ///< keep the scale, so that an edit moves the curve (dragging)
  const Doubts* doubts = nullptr;   ///< of `now`, never of another analysis
  bool doubts_come = false;         ///< they may follow: what switches their band stays in sight
};

/// A card that belongs to a plot, for a button beside its title.
struct PlotLink {
  QString text, help;
  QString part;  ///< empty: there is none
};

/// A plot as a widget. Wheel zooms at the pointer (Ctrl: only x, Shift: only y), drag pans, Ctrl
/// and drag zooms to a box; double click, Home or wholeView() shows everything; Left and Right step
/// the cursor; the other keys stand with the entries of its menu. It takes the focus.
class PlotView : public QWidget {
  Q_OBJECT

 public:
  explicit PlotView(QWidget* parent = nullptr);
  ~PlotView() override;

  virtual PlotKind kind() const = 0;
  QString title() const { return plot_title(kind()); }

  virtual void setInput(const PlotInput& input) = 0;
  virtual void setTheme(const Theme& theme) = 0;
  /// Time of the linked cursor [s]; NaN hides it. Plots without a time axis mark the point of that
  /// time on their path, or ignore it.
  virtual void setCursor(double time_s) = 0;
  /// The same for the second cursor, which the first one's differences are taken from.
  virtual void setSecondCursor(double /*time_s*/) {}

  /// What the plot says in words: its message when empty, else its readings. For tool tips, screen
  /// readers and the clipboard.
  virtual QString summary() const = 0;
  /// The data as text: a header row of names with units, a comma between columns, a decimal point.
  virtual QString csv() const = 0;
  /// The same of what is in view: the shown lines between the ends of the x axis.
  virtual QString visibleCsv() const { return csv(); }
  /// What the cursors read, as a table with tabs; of plots without cursors the summary.
  QString readout() const;
  /// Draws the plot as vectors into a rectangle of any painter, in the colours of `theme`. One
  /// painter serves screen, print and PDF.
  virtual void paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const = 0;

  virtual PlotLink link() const { return {}; }

  /// The charts it is made of, from the top; none for a plot without axes.
  virtual std::vector<ChartPlot*> charts() const { return {}; }
  const PlotOptions& options() const { return options_; }
  void setOptions(const PlotOptions& options);
  /// The variant that the shown curves are less of; empty: they are the curves themselves.
  QString shownLess() const;
  /// Why no difference to a variant can be shown; empty: one can.
  QString whyNoDifference() const;
  void toggleLine(const QString& legend_text);  ///< shows or hides the lines of an entry

  /// The views chosen before and, after going back, those after.
  bool canGoBack() const;
  bool canGoForward() const;
  void goBack();
  void goForward();

  /// A picture with a light ground, `scale` device pixels per logical pixel.
  QImage image(double scale = 2) const;
  /// The same by its options.
  QImage image(const PictureOptions& options) const;
  QByteArray svg(const PictureOptions& options) const;
  /// Writes .png, .svg, .pdf or .csv by the file's ending; a fault leaves an old file as it was.
  /// Empty: done.
  std::optional<Diagnostic> exportTo(const std::filesystem::path& file,
                                     const PictureOptions& options = {}) const;

 public slots:
  /// Shows all data and lets the scale follow the data again.
  virtual void wholeView() {}

 signals:
  /// The pointer or the keys moved the cursor to this time [s]; NaN: it left. Never emitted by
  /// setCursor().
  void cursorMoved(double time_s);
  void secondCursorMoved(double time_s);
  void cursorsChanged();  ///< by anyone
  /// By the user or by setOptions().
  void optionsChanged();
  /// The menu is asked for at a place on the screen.
  void menuWanted(const QPoint& global);
  /// The user asks for the card of a part: "pan.cable".
  void partChosen(const QString& part);

 protected:
  virtual void applyOptions() {}
  void noteView(bool merges);  ///< the user changed the view of one of its charts
  void contextMenuEvent(QContextMenuEvent* event) override;

 private:
  PlotOptions options_;
  std::unique_ptr<ViewHistory> history_;
  QElapsedTimer since_note_;
};

std::unique_ptr<PlotView> make_plot(PlotKind kind, QWidget* parent = nullptr);

/// The same picture without a widget in sight, for the sheet.
void paint_plot(QPainter& painter, const QRectF& rect, PlotKind kind, const PlotInput& input,
                const Theme& theme);

}  // namespace gazewright
