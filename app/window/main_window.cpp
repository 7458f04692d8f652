#include "app/window/main_window.h"

#include <QApplication>
#include <QLabel>
#include <QMenuBar>
#include <QResizeEvent>
#include <QScrollArea>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/window/accessible.h"
#include "app/window/card.h"
#include "app/window/desktop_theme.h"
#include "app/window/doubts_dialog.h"
#include "app/window/drawing_panel.h"
#include "app/window/drive_line.h"
#include "app/window/drive_settings_dialog.h"
#include "app/window/explainer.h"
#include "app/window/findings_view.h"
#include "app/window/guide_strip.h"
#include "app/window/look.h"
#include "app/window/message_bar.h"
#include "app/window/missing_bar.h"
#include "app/window/move_limits_dialog.h"
#include "app/window/plots_panel.h"
#include "app/window/question_bar.h"
#include "app/window/ratio_scale.h"
#include "app/window/safe_work.h"
#include "app/window/settings_window.h"

namespace gazewright {
namespace {
constexpr int kNarrow_px = 1400;  // below it, card and drawing share a place
constexpr int kDimAfter_ms = 80;  // a result that is this late looks stale

/// Of least heights only: a scroll area around it would else ask for the preferred height of all as
/// soon as a line of text in it may wrap.
class CentreLayout : public QVBoxLayout {
 public:
  using QVBoxLayout::QVBoxLayout;
  bool hasHeightForWidth() const override { return false; }
};

}  // namespace

MainWindow::MainWindow(const WindowSetup& setup)
    : settings_(setup.settings_file),
      actions_(this),
      setup_(setup),
      desktop_(new DesktopTheme(this)),
      preferences_(settings_.preferences()),
      theme_(theme_for(ThemeKind::light)) {
  if (!setup.theme.isEmpty()) preferences_.theme = setup.theme;
  if (setup.text_percent > 0) preferences_.text_percent = nearest_text_size(setup.text_percent);
  set_text_size(preferences_.text_percent);
  setAcceptDrops(true);
  install_accessibility();
  applyTheme();
  // First of all that hear of an edit: while they take it up, it is analysed.
  connect(&document_, &Document::rigChanged, this, [this] { recompute_.request(document_.rig()); });
  build();
  buildMenus();
  connectVariants();
  connectParts();
  connectHelp();
  connectDoubts();
  actions_.on("show.drive_settings", [this] { showDriveSettings(); });
  restoreLayout();
  applyTheme();
}

MainWindow::~MainWindow() {
  // The history is cleared while it goes, when half of the window is gone already.
  document_.history().disconnect();
  document_.disconnect();
  recompute_.disconnect();
  doubt_work_.disconnect();
  explainer_->disconnect(this);
  if (doubts_dialog_) doubts_dialog_->disconnect(this);
}

/// From the outside in: what moves to another parent is styled again, with all that it holds.
void MainWindow::build() {
  // With large text on a small screen the whole scrolls, so that nothing is out of reach.
  auto* scroll = new QScrollArea(this);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setFocusPolicy(Qt::NoFocus);
  auto* centre = new QWidget(scroll->viewport());
  scroll->setWidget(centre);
  setCentralWidget(scroll);
  messages_ = new MessageBar(centre);
  buildSafety();
  guide_ = new GuideStrip(centre);
  lines_ = {new DriveLine(Axis::pan, centre), new DriveLine(Axis::tilt, centre)};
  missing_ = new MissingBar(centre);
  whole_ = new QSplitter(Qt::Vertical, centre);
  middle_ = new QSplitter(Qt::Horizontal, whole_);
  card_ = new Card(document_, middle_);
  drawing_ = new DrawingPanel(middle_);
  plots_ = new PlotsPanel(middle_);
  findings_ = new FindingsView(whole_);
  middle_->setChildrenCollapsible(false);
  middle_->setHandleWidth(6);
  middle_->setStretchFactor(2, 1);
  whole_->setChildrenCollapsible(false);
  whole_->setHandleWidth(6);
  whole_->setStretchFactor(0, 1);

  auto* layout = new CentreLayout(centre);
  layout->setContentsMargins(6, 2, 6, 6);
  layout->setSpacing(5);
  layout->addWidget(messages_);
  layout->addWidget(questions_);
  layout->addWidget(guide_);
  for (DriveLine* line : lines_) layout->addWidget(line);
  layout->addWidget(missing_);
  layout->addWidget(whole_, 1);
  centre->setFocusPolicy(Qt::ClickFocus);
  centre->setFocus();
  badge_ = new QLabel;
  badge_->setObjectName(QStringLiteral("updating"));
  badge_->setContentsMargins(8, 2, 12, 2);
  menuBar()->setCornerWidget(badge_);
}

void MainWindow::connectParts() {
  connect(&document_, &Document::rigChanged, this, &MainWindow::rigChanged);
  connect(&document_, &Document::fileChanged, this, &MainWindow::updateTitle);
  connect(&recompute_, &Recompute::behindChanged, this, &MainWindow::behindChanged);
  connect(&recompute_, &Recompute::analysisReady, this, &MainWindow::showAnalysis);
  connect(&recompute_, &Recompute::sweepReady, this, &MainWindow::showSweep);
  connect(&recompute_, &Recompute::reachChanged, this, &MainWindow::feedPlots);
  connect(&recompute_, &Recompute::settled, this, &MainWindow::writeWaitingSheet);
  for (Axis axis : kAxes) {
    DriveLine& line = driveLine(axis);
    connect(&line, &DriveLine::partChosen, this, &MainWindow::select);
    const RatioScale* scale = line.ratioScale();
    connect(scale, &RatioScale::dragStarted, this, &MainWindow::startDrag);
    connect(scale, &RatioScale::dragEnded, this, &MainWindow::endDrag);
    connect(scale, &RatioScale::ratioMoved, this,
            [this, axis](double ratio, int dragId) { moveRatio(axis, ratio, dragId); });
  }
  connect(card_, &Card::partChosen, this, &MainWindow::select);
  connect(card_, &Card::remedyChosen, this, &MainWindow::applyRemedy);
  connect(drawing_, &DrawingPanel::partChosen, this, &MainWindow::select);
  connect(findings_, &FindingsView::findingChosen, this, &MainWindow::select);
  connect(findings_, &FindingsView::remedyChosen, this, &MainWindow::applyRemedy);
  connect(plots_, &PlotsPanel::cursorMoved, this, &MainWindow::setPlotCursor);
  connect(plots_, &PlotsPanel::partChosen, this, &MainWindow::select);
  connect(plots_, &PlotsPanel::kindsChanged, this, &MainWindow::connectDials);
  connectDials();
  connectDrawing();
  connect(card_->placeButton(), &QToolButton::clicked, this, &MainWindow::togglePlace);
  connect(drawing_->placeButton(), &QToolButton::clicked, this, &MainWindow::togglePlace);
  connect(desktop_, &DesktopTheme::changed, this, &MainWindow::applyTheme);
  dim_timer_.setSingleShot(true);
  dim_timer_.setInterval(kDimAfter_ms);
  connect(&dim_timer_, &QTimer::timeout, this, [this] { dimFigures(true); });
}

void MainWindow::fitPlace() {
  narrow_ = width() < kNarrow_px;
  card_->setVisible(!narrow_ || card_in_place_);
  drawing_->setVisible(!narrow_ || !card_in_place_);
  card_->placeButton()->setVisible(narrow_);
  drawing_->placeButton()->setVisible(narrow_);
  actions_["show.place"]->setEnabled(narrow_);
}

void MainWindow::togglePlace() {
  card_in_place_ = !card_in_place_;
  fitPlace();
}

void MainWindow::resizeEvent(QResizeEvent* event) {
  QMainWindow::resizeEvent(event);
  if (narrow_ != (event->size().width() < kNarrow_px)) fitPlace();
}

/// What its fields need.
int MainWindow::cardWidth() const {
  return QFontMetrics(QApplication::font()).averageCharWidth() * 54;
}

void MainWindow::restoreLayout() {
  resize(1440, 900);
  const int card = cardWidth();
  card_->setMinimumWidth(card);
  middle_->setMinimumHeight(QFontMetrics(QApplication::font()).lineSpacing() * 22);
  middle_->setSizes({card, card * 4 / 3, 1440 - card * 7 / 3});
  whole_->setSizes({620, 190});
  if (setup_.remember) {
    restoreGeometry(settings_.bytes(QStringLiteral("window")));
    middle_->restoreState(settings_.bytes(QStringLiteral("middle")));
    whole_->restoreState(settings_.bytes(QStringLiteral("whole")));
    std::vector<PlotKind> kinds;
    for (const QString& key : settings_.plots()) {
      if (const auto kind = plot_kind(key)) kinds.push_back(*kind);
    }
    if (!kinds.empty()) plots_->setKinds(kinds);
  }
  fitPlace();
}

void MainWindow::storeLayout() {
  if (!setup_.remember) return;
  settings_.setBytes(QStringLiteral("window"), saveGeometry());
  settings_.setBytes(QStringLiteral("middle"), middle_->saveState());
  settings_.setBytes(QStringLiteral("whole"), whole_->saveState());
  QStringList keys;
  for (PlotKind kind : plots_->kinds()) keys << plot_key(kind);
  settings_.setPlots(keys);
}

void MainWindow::applyTheme() {
  const QString& name_of_theme = preferences_.theme;
  const ThemeKind kind = name_of_theme == QStringLiteral("light")      ? ThemeKind::light
                         : name_of_theme == QStringLiteral("dark")     ? ThemeKind::dark
                         : name_of_theme == QStringLiteral("contrast") ? ThemeKind::high_contrast
                                                                       : desktop_->kind();
  theme_ = kind == ThemeKind::high_contrast && desktop_->isDark() ? dark_contrast_theme()
                                                                  : theme_for(kind);
  apply_look(theme_);
  set_calm(preferences_.calm || desktop_->wantsCalm());
  if (!centralWidget()) return;  // called once before anything is built, for the palette
  for (DriveLine* line : lines_) line->setTheme(theme_);
  card_->setTheme(theme_);
  drawing_->setTheme(theme_);
  plots_->setTheme(theme_);
  findings_->setTheme(theme_);
  messages_->setTheme(theme_);
  if (settings_window_) settings_window_->messages().setTheme(theme_);
  if (doubts_dialog_) doubts_dialog_->setTheme(theme_);
  if (move_limits_) move_limits_->setTheme(theme_);
  if (drive_settings_) drive_settings_->setTheme(theme_);
  for (const char* name : {"desktop", "light", "dark", "contrast"}) {
    const std::string id = std::string("show.") + name;
    actions_[id.c_str()]->setChecked(preferences_.theme == QLatin1String(name));
  }
}

}  // namespace gazewright
