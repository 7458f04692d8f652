#pragma once

#include <QPointer>
#include <QWidget>
#include <limits>
#include <map>
#include <vector>

#include "app/plots/plot_view.h"

class QComboBox;
class QFrame;
class QGridLayout;
class QToolButton;

namespace gazewright {

class PlotMenu;

/// Two to six plots at once, each chosen from the list at its top. Their cursors are linked.
class PlotsPanel : public QWidget {
  Q_OBJECT
 public:
  static constexpr int kFewest = 2, kMost = 6;

  explicit PlotsPanel(QWidget* parent = nullptr);

  std::vector<PlotKind> kinds() const;
  void setKinds(std::vector<PlotKind> kinds);  ///< double and surplus ones are left out
  static std::vector<PlotKind> usualKinds();
  void addPlot();     ///< the first kind that is not shown
  void removePlot();  ///< the last one
  /// The input is kept by the caller until the next call.
  void setInput(const PlotInput& input);
  void setTheme(const Theme& theme);
  void setCursor(double time_s);
  void compareLog(const QString& file);  ///< lays a measured move over the step, in a window
  PlotView* plot(PlotKind kind) const;   ///< null where it is not shown
  /// The plot that the menu is of: the one that had the focus last, else the first.
  PlotView* current() const;
  PlotMenu* menu() const { return menu_; }

 signals:
  void cursorMoved(double time_s);
  void kindsChanged();
  void optionsChanged();                       ///< of any plot
  void partChosen(const QString& part);        ///< its card is asked for
  void told(const QString& text, bool fault);  ///< what became of a file

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  struct Cell {
    QFrame* frame;
    QComboBox* choice;
    QToolButton *menu, *remove;
    PlotView* plot;
  };
  Cell makeCell(PlotKind kind);
  void connectPlot(PlotView* plot);
  void changeKind(QFrame* frame, PlotKind kind);
  void openMenu(PlotView* plot, const QPoint& at);
  void shareOptions(const PlotView* from);
  void lay();
  int columns() const;

  QGridLayout* grid_;
  std::vector<Cell> cells_;
  PlotInput input_;
  Theme theme_;
  int columns_ = 0;
  PlotMenu* menu_;
  QPointer<PlotView> current_;
  std::map<PlotKind, PlotOptions> options_;  ///< of plots shown before
  bool held_ = false;
  double second_s_ = std::numeric_limits<double>::quiet_NaN();  ///< of cursor B
};

}  // namespace gazewright
