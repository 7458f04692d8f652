#pragma once

#include <QObject>
#include <string>
#include <vector>

#include "app/window/help_places.h"

class QMenu;

namespace gazewright {

class FiguresWindow;
class Handbook;
class MainWindow;

/// Answers "why?" (F2) and "help" (F1) about whatever has the focus in the window: a finding, a
/// tile, a ratio scale, a field, a plot. Owns the figures' window and the handbook, each made when
/// it is first asked for.
class Explainer : public QObject {
  Q_OBJECT
 public:
  explicit Explainer(MainWindow& window);

  void why(QWidget* at);   ///< explains what has the focus; all figures where there is nothing
  void help(QWidget* at);  ///< the handbook where it speaks of it
  void showFigures();
  void openHandbook(const HelpPlace& place);
  void resultsShown();                                 ///< after each analysis that is shown
  FiguresWindow* figures() const { return figures_; }  ///< null until it was asked for
  Handbook* handbook() const { return handbook_; }

 signals:
  void figuresShownOrHidden();

 private:
  FiguresWindow& figuresWindow();
  void fillFigures();
  void offerMenu(QWidget* at, const QPoint& where);
  void whyPart(const std::string& part);

  MainWindow& window_;
  FiguresWindow* figures_ = nullptr;
  Handbook* handbook_ = nullptr;
};

/// What a widget of the window stands for.
struct Subject {
  enum class Kind { nothing, finding, part, field, plot, drawing, messages } kind = Kind::nothing;
  std::string name;  ///< id of the finding, path of part or field
  PlotKind plot = PlotKind::step;
};
Subject subject_of(MainWindow& window, QWidget* at);

/// The figures that a tile shows, then those of the same subject: what "why?" on a part lists
/// first.
std::vector<std::string> figures_of_part(std::string_view part);

}  // namespace gazewright
