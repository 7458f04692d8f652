#include "app/window/plot_menu.h"

#include <QApplication>
#include <QClipboard>
#include <QFileInfo>
#include <QMimeData>
#include <cmath>

#include "app/plots/chart_plot.h"
#include "app/plots/plot_export.h"
#include "app/window/ask_where.h"
#include "app/window/log_dialog.h"
#include "app/window/plot_cursors.h"
#include "app/window/plot_table.h"

namespace gazewright {
namespace {

QString with_ending(const QString& file, const QString& ending) {
  return QFileInfo(file).suffix().isEmpty() ? file + '.' + ending : file;
}

}  // namespace

PlotMenu::PlotMenu(QWidget* parent) : QMenu(tr("&Plot"), parent) {
  setToolTipsVisible(true);
  ask_file_ = [this](const QString& title, const QString& name, const QString& filter) {
    return ask_where(parentWidget(), title, name, filter, QFileInfo(name).suffix());
  };
}

void PlotMenu::setPlot(PlotView* plot, const Rig* rig) {
  plot_ = plot;
  rig_ = rig ? std::optional(*rig) : std::nullopt;
  fill();
}

QAction* PlotMenu::action(const char* id) const {
  return findChild<QAction*>(QStringLiteral("plot.") + QLatin1String(id));
}

QAction* PlotMenu::add(const char* id, const QString& text, const char* keys,
                       const std::function<void()>& run) {
  auto* action = new QAction(text, this);
  action->setObjectName(QStringLiteral("plot.") + QLatin1String(id));
  action->setShortcut(QKeySequence(QLatin1String(keys)));
  action->setShortcutContext(Qt::WidgetShortcut);  // the plot itself listens to the key
  connect(action, &QAction::triggered, this, [this, run] {
    if (plot_) run();
  });
  addAction(action);
  return action;
}

QAction* PlotMenu::addCheck(const char* id, const QString& text, const char* keys,
                            bool PlotOptions::*option) {
  QAction* action = add(id, text, keys, [this, option] {
    PlotOptions options = plot_->options();
    options.*option = !(options.*option);
    plot_->setOptions(options);
  });
  action->setCheckable(true);
  action->setChecked(plot_->options().*option);
  return action;
}

void PlotMenu::fill() {
  clear();
  qDeleteAll(findChildren<QMenu*>(Qt::FindDirectChildrenOnly));
  if (!plot_) return;
  addSection(plot_->title());
  add("copy_picture", tr("&Copy picture"), "", [this] { copyPicture(); });
  add("copy_data", tr("Copy &data"), "", [this] { copy_csv(plot_->csv()); });
  add("save_picture", tr("Save &picture…"), "", [this] { askPicture(); });
  add("save_data", tr("&Save data…"), "", [this] { saveData(false); });
  if (!plot_->charts().empty())
    add("save_visible", tr("Save &visible data…"), "", [this] { saveData(true); });
  add("table", tr("Data as &table"), "", [this] { showTable(); });
  if (plot_->charts().empty()) return addDifference();
  addView();
  addLines();
  addDifference();
  addCursors();
}

void PlotMenu::addView() {
  addSeparator();
  add("whole", tr("&Whole view"), "Home", [this] { plot_->wholeView(); });
  add("back", tr("View &before"), "Alt+Left", [this] {
    plot_->goBack();
  })->setEnabled(plot_->canGoBack());
  add("forward", tr("View a&fter"), "Alt+Right", [this] {
    plot_->goForward();
  })->setEnabled(plot_->canGoForward());
  addCheck("fixed", tr("Fi&xed scale"), "F", &PlotOptions::fixed_scale);
  addCheck("grid", tr("&Grid"), "G", &PlotOptions::grid);
  if (plot_->charts().front()->fullChart().x_may_be_log)
    addCheck("log_time", tr("L&ogarithmic time"), "L", &PlotOptions::log_time);
  if (plot_->charts().front()->fullChart().x_may_be_radps)
    addCheck("radps", tr("F&requency in rad/s"), "R", &PlotOptions::radps);
}

void PlotMenu::addLines() {
  QStringList texts;
  for (const ChartPlot* chart : plot_->charts()) {
    for (const LegendEntry& entry : chart->fullChart().legend) {
      if (!texts.contains(entry.text)) texts << entry.text;
    }
  }
  if (texts.isEmpty()) return;
  QMenu* lines = addMenu(tr("&Lines"));
  int number = 0;
  for (const QString& text : texts) {
    QAction* action = lines->addAction(text, this, [this, text] {
      if (plot_) plot_->toggleLine(text);
    });
    action->setCheckable(true);
    action->setChecked(!plot_->options().hidden.contains(text));
    if (++number > 9) continue;
    action->setShortcut(QKeySequence(QString::number(number)));
    action->setShortcutContext(Qt::WidgetShortcut);
  }
}

/// The curves themselves, and less each variant that lies under them; the key goes round.
void PlotMenu::addDifference() {
  QMenu* less = addMenu(tr("D&ifference to"));
  const QString why_not = plot_->whyNoDifference();
  less->menuAction()->setObjectName(QStringLiteral("plot.difference"));
  less->menuAction()->setEnabled(why_not.isEmpty());
  less->menuAction()->setToolTip(why_not);
  if (!why_not.isEmpty()) return;
  ChartPlot* chart = plot_->charts().front();
  const auto addChoice = [&](const QString& text, const QString& variant) {
    QAction* action = less->addAction(text, this, [this, chart, variant] {
      if (plot_) chart->showLess(variant);
    });
    action->setCheckable(true);
    action->setChecked(plot_->shownLess() == variant);
    if (chart->nextVariant() != variant) return;
    action->setShortcut(QKeySequence(Qt::Key_D));
    action->setShortcutContext(Qt::WidgetShortcut);
  };
  addChoice(tr("&None: the curves themselves"), {});
  for (const QString& variant : chart->variants())
    addChoice(QString(variant).replace('&', QStringLiteral("&&")), variant);
}

void PlotMenu::addCursors() {
  addSeparator();
  ChartPlot* chart = plot_->charts().front();
  QAction* second =
      add("second", tr("&Second cursor"), "B", [chart] { chart->toggleSecondCursor(); });
  second->setCheckable(true);
  second->setChecked(std::isfinite(chart->cursorPlace(ChartPlot::Cursor::b)));
  addCheck("hold", tr("&Hold the cursor"), "H", &PlotOptions::held);
  add("zoom_cursors", tr("&Zoom to between the cursors"), "Z", [chart] { chart->zoomToCursors(); });
  add("copy_readout", tr("Copy &readout"), "",
      [this] { QApplication::clipboard()->setText(plot_->readout()); });
  add("cursors", tr("C&ursors by number…"), "", [this] { showCursors(); });
  if (plot_->kind() != PlotKind::step) return;
  addSeparator();
  add("log", tr("Co&mpare with a measured log…"), "", [this, chart] {
    (new LogDialog(chart->fullChart(), chart->canvas()->style().theme, parentWidget()))->show();
  });
}

QString PlotMenu::caption() const {
  return rig_ ? picture_caption(*rig_, picture_.variant, QDate::currentDate()) : QString();
}

/// Pixels at twice the size, and vectors for programs that take them.
void PlotMenu::copyPicture() const {
  PictureOptions options;
  options.caption = caption();
  options.subject = picture_subject(picture_.variant);
  auto* copied = new QMimeData;
  copied->setImageData(plot_->image(options));
  copied->setData(QStringLiteral("image/svg+xml"), plot_->svg(options));
  QApplication::clipboard()->setMimeData(copied);
}

void PlotMenu::askPicture() {
  auto* dialog = new PictureDialog(plot_->title(), picture_, parentWidget());
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, dialog] { savePicture(dialog->choice()); });
  dialog->open();
}

void PlotMenu::savePicture(const PictureDialog::Choice& choice) {
  if (!plot_) return;
  picture_ = choice;
  const QString file = ask_file_(tr("Save picture"), plot_key(plot_->kind()) + '.' + choice.ending,
                                 tr("%1 files (*.%2)").arg(choice.ending.toUpper(), choice.ending));
  if (file.isEmpty() || !plot_) return;
  PictureOptions options = picture_options(choice);
  options.caption = caption();
  options.subject = picture_subject(picture_.variant);
  const QString named = with_ending(file, choice.ending);
  tell(named, plot_->exportTo(named.toStdString(), options));
}

void PlotMenu::saveData(bool visible) {
  const QString csv = visible ? plot_->visibleCsv() : plot_->csv();
  const QString file = ask_file_(tr("Save data"), plot_key(plot_->kind()) + QStringLiteral(".csv"),
                                 tr("CSV files, comma and decimal point (*.csv)"));
  if (file.isEmpty()) return;
  const QString named = with_ending(file, QStringLiteral("csv"));
  tell(named, save_text(named.toStdString(), csv.toStdString()));
}

void PlotMenu::tell(const QString& file, const std::optional<Diagnostic>& fault) {
  const QString name = QFileInfo(file).fileName();
  if (!fault) return emit told(tr("%1 is written.").arg(name), false);
  emit told(
      tr("%1 was not written: %2. %3")
          .arg(name, QString::fromStdString(fault->problem), QString::fromStdString(fault->fix)),
      true);
}

void PlotMenu::showTable() { (new PlotTable(*plot_, parentWidget()))->show(); }
void PlotMenu::showCursors() { (new PlotCursors(plot_, parentWidget()))->show(); }

}  // namespace gazewright
