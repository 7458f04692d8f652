#include "app/window/explainer.h"

#include <QLineEdit>
#include <QMenu>
#include <QTableView>
#include <algorithm>

#include "app/plots/dial_view.h"
#include "app/window/card.h"
#include "app/window/card_row.h"
#include "app/window/drawing_panel.h"
#include "app/window/drive_line.h"
#include "app/window/figures_window.h"
#include "app/window/findings_model.h"
#include "app/window/findings_view.h"
#include "app/window/handbook.h"
#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/parts.h"
#include "app/window/places.h"
#include "app/window/plots_panel.h"
#include "app/window/ratio_scale.h"
#include "app/window/special_tiles.h"
#include "core/analysis/context.h"
#include "core/analysis/explain.h"

namespace gazewright {
namespace {

struct PartFigures {
  std::string_view part;
  std::vector<std::string_view> ids;
};

/// Shown on the tiles, see drive_line_text.cpp; "task" is the headline.
const std::vector<PartFigures>& shown_on_tiles() {
  static const std::vector<PartFigures> rows{
      {"supply", {"supply.peak_current", "supply.peak_power", "supply.peak_voltage"}},
      {"task", {"<axis>.picture.settle_time", "<axis>.step.settle_time", "<axis>.pointing.gap_px"}},
      {"drive", {"<axis>.step.peak_current", "<axis>.step.peak_speed"}},
      {"motor", {"<axis>.motor.torque_constant", "<axis>.step.peak_current"}},
      {"gearbox",
       {"<axis>.output.torque_stall", "<axis>.output.speed_top", "<axis>.ratio.best_time",
        "<axis>.ratio.best_acceleration"}},
      {"stops", {"<axis>.travel.stops", "<axis>.travel.soft", "<axis>.travel.blind"}},
      {"cable", {"<axis>.travel.cable", "<axis>.travel.usable"}},
      {"load",
       {"<axis>.inertia.load", "<axis>.inertia.rotor_reflected", "mass.total",
        "tilt.balance.offset"}}};
  return rows;
}

std::string finding_of(const FindingsView& view) {
  const QModelIndex at = view.table()->currentIndex();
  const auto* model = qobject_cast<const FindingsModel*>(view.table()->model());
  return at.isValid() && model ? model->finding(at.row()).id : std::string();
}

/// What stands for itself, whatever it lies in.
std::optional<Subject> own_subject(MainWindow& window, QWidget* at) {
  using Kind = Subject::Kind;
  if (const auto* view = qobject_cast<FindingsView*>(at))
    return Subject{Kind::finding, finding_of(*view)};
  if (const auto* scale = qobject_cast<RatioScale*>(at))
    return Subject{Kind::part, scale->objectName().section(' ', 0, 0).toStdString() + ".gearbox"};
  if (const auto* headline = qobject_cast<HeadlineTile*>(at))
    return Subject{Kind::part, headline->objectName().section(' ', 0, 0).toStdString() + ".task"};
  if (const auto* tile = qobject_cast<Tile*>(at))
    return Subject{Kind::part, tile->part().toStdString()};
  if (qobject_cast<TravelDial*>(at)) return Subject{Kind::plot, {}, PlotKind::travel};
  if (const auto* plot = qobject_cast<PlotView*>(at)) return Subject{Kind::plot, {}, plot->kind()};
  if (qobject_cast<DrawingPanel*>(at)) return Subject{Kind::drawing, {}};
  if (qobject_cast<MessageBar*>(at)) return Subject{Kind::messages, {}};
  if (qobject_cast<CardRow*>(at) && at->objectName().endsWith(QStringLiteral(" row")))
    return Subject{Kind::field, at->objectName().chopped(4).toStdString()};
  if (qobject_cast<Card*>(at)) return Subject{Kind::part, window.card().part()};
  return std::nullopt;
}

}  // namespace

std::vector<std::string> figures_of_part(std::string_view part) {
  const auto axis = axis_of_id(part);
  const std::string_view name = axis ? part.substr(part.find('.') + 1) : part;
  std::vector<std::string> ids;
  for (const PartFigures& row : shown_on_tiles()) {
    if (row.part != name) continue;
    for (const std::string_view id : row.ids) {
      const bool both = id.starts_with("<axis>") && !axis;
      for (const Axis each : kAxes) {
        if (both || each == axis.value_or(Axis::pan)) ids.push_back(for_axis(id, each));
      }
    }
  }
  return ids;
}

Subject subject_of(MainWindow& window, QWidget* at) {
  for (; at && at != &window; at = at->parentWidget()) {
    if (const auto subject = own_subject(window, at)) return *subject;
    // A plot's list and buttons stand beside it in its frame.
    if (const auto* plot = at->findChild<PlotView*>(QString(), Qt::FindDirectChildrenOnly))
      return {Subject::Kind::plot, {}, plot->kind()};
  }
  return {};
}

Explainer::Explainer(MainWindow& window) : QObject(&window), window_(window) {
  std::vector<QWidget*> widgets{window.findings().table()};
  for (const Axis axis : kAxes) {
    for (Tile* tile : window.driveLine(axis).findChildren<Tile*>()) widgets.push_back(tile);
  }
  for (QWidget* widget : widgets) {
    widget->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(widget, &QWidget::customContextMenuRequested, this,
            [this, widget](const QPoint& where) { offerMenu(widget, where); });
  }
  connect(&window.findings(), &FindingsView::whyAsked, this,
          [this] { why(window_.findings().table()); });
}

/// The same two commands as in the menus, about the widget that was pressed.
void Explainer::offerMenu(QWidget* at, const QPoint& where) {
  auto* menu = new QMenu(at);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  menu->addAction(tr("&Why?"), QKeySequence(Qt::Key_F2), this, [this, at] { why(at); });
  menu->addAction(tr("&Handbook"), QKeySequence(Qt::Key_F1), this, [this, at] { help(at); });
  menu->popup(at->mapToGlobal(where));
}

FiguresWindow& Explainer::figuresWindow() {
  if (!figures_) {
    figures_ = new FiguresWindow(&window_);
    connect(figures_, &FiguresWindow::fieldChosen, this, [this](const QString& path) {
      window_.select(path);
      window_.card().focusField(path.toStdString());
      window_.activateWindow();
    });
    connect(figures_, &FiguresWindow::helpWanted, this, &Explainer::openHandbook);
    connect(figures_, &FiguresWindow::shownOrHidden, this, &Explainer::figuresShownOrHidden);
  }
  if (!figures_->isVisible()) fillFigures();
  figures_->show();
  figures_->raise();
  figures_->activateWindow();
  return *figures_;
}

void Explainer::resultsShown() {
  if (figures_ && figures_->isVisible() && !window_.isDragging()) fillFigures();
}

void Explainer::fillFigures() {
  figures_->setResults(window_.recompute().analysedRig(), window_.recompute().analysis(),
                       window_.doubts());
}

void Explainer::showFigures() {
  FiguresWindow& figures = figuresWindow();
  figures.showAll();
  figures.search()->setFocus();
  figures.search()->selectAll();
}

void Explainer::whyPart(const std::string& part) {
  const std::vector<std::string> ids = figures_of_part(part);
  if (ids.empty()) return figuresWindow().explainField(part);
  const QString title =
      part.ends_with("task") ? tr("Task") : part_title(window_.document().rig(), card_of(part));
  figuresWindow().explainSome(ids, tr("Figures shown at: %1").arg(title));
}

/// Where nothing has the focus, the worst finding: they stand in that order.
void Explainer::why(QWidget* at) {
  const Subject subject = subject_of(window_, at);
  switch (subject.kind) {
    case Subject::Kind::finding:
      if (!subject.name.empty()) return figuresWindow().explainFinding(subject.name);
      break;
    case Subject::Kind::part:
      return whyPart(subject.name);
    case Subject::Kind::field:
      return figuresWindow().explainField(subject.name);
    case Subject::Kind::plot:
      return openHandbook(help_for_plot(subject.plot));
    case Subject::Kind::drawing:
    case Subject::Kind::messages:
    case Subject::Kind::nothing:
      break;
  }
  const auto& findings = window_.recompute().analysis()->findings;
  if (findings.empty()) return showFigures();
  figuresWindow().explainFinding(findings.front().id);
}

void Explainer::help(QWidget* at) {
  const Subject subject = subject_of(window_, at);
  switch (subject.kind) {
    case Subject::Kind::finding:
      return openHandbook(subject.name.empty() ? help_for_window(tr("Findings"))
                                               : help_for_finding(subject.name));
    case Subject::Kind::part:
    case Subject::Kind::field:
      return openHandbook(help_for_part(subject.name));
    case Subject::Kind::plot:
      return openHandbook(help_for_plot(subject.plot));
    case Subject::Kind::drawing:
      return openHandbook(help_for_window(tr("Drawing")));
    case Subject::Kind::messages:
      return openHandbook(help_for_window(tr("Messages")));
    case Subject::Kind::nothing:
      break;
  }
  openHandbook({QStringLiteral("index.md"), {}});
}

void Explainer::openHandbook(const HelpPlace& place) {
  if (!handbook_) handbook_ = new Handbook(handbook_folder(), &window_);
  handbook_->search()->clear();
  handbook_->show();  // first: where a section lies depends on the width
  handbook_->open(place);
  handbook_->raise();
  handbook_->activateWindow();
}

}  // namespace gazewright
