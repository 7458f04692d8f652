#include "app/window/figures_window.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QScrollBar>
#include <QShortcut>
#include <QSplitter>
#include <QTableView>
#include <QTextBrowser>
#include <QToolButton>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/window/empty_note.h"
#include "app/window/explain_text.h"
#include "app/window/figures_model.h"
#include "app/window/widgets.h"

namespace gazewright {

FiguresWindow::FiguresWindow(QWidget* parent) : SeenDialog(parent) {
  setWindowTitle(tr("Figures"));
  model_ = new FiguresModel(this);
  auto* split = new QSplitter;
  split->addWidget(makeList());
  split->addWidget(makeText());
  split->setStretchFactor(1, 1);
  split->setSizes({500, 530});
  split->setChildrenCollapsible(false);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(split);
  resize(1050, 620);
  auto* help = new QShortcut(QKeySequence::HelpContents, this);
  connect(help, &QShortcut::activated, this, [this] { emit helpWanted(place()); });
  connect(search_, &QLineEdit::textChanged, this, [this](const QString& words) {
    model_->setSearch(words);
    if (model_->rowCount() > 0) table_->selectRow(0);
    none_->setVisible(model_->rowCount() == 0);
  });
  connect(none_->button(), &QToolButton::clicked, search_, &QLineEdit::clear);
  connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this,
          &FiguresWindow::currentChanged);
  connect(text_, &QTextBrowser::anchorClicked, this, &FiguresWindow::follow);
  connect(all_, &QToolButton::clicked, this, &FiguresWindow::showAll);
  connect(copy_, &QToolButton::clicked, this, &FiguresWindow::copy);
  connect(help_, &QToolButton::clicked, this, [this] { emit helpWanted(place()); });
}

QWidget* FiguresWindow::makeList() {
  search_ = searchEdit(tr("Search all figures"), tr("Search all figures"));
  search_->setObjectName(QStringLiteral("figures.search"));
  only_ = quietLabel();
  only_->setWordWrap(true);
  all_ = textButton(tr("All figures"), tr("List every figure again"));
  table_ = new QTableView;
  table_->setObjectName(QStringLiteral("figures"));
  table_->setAccessibleName(tr("Figures"));
  table_->setModel(model_);
  showAsList(table_);
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  table_->horizontalHeader()->setSectionResizeMode(FiguresModel::name, QHeaderView::Stretch);
  fitColumns();
  table_->installEventFilter(this);
  none_ = new EmptyNote(table_->viewport(), tr("No such figure"),
                        tr("None has all these words in its name, formula or id."),
                        tr("Clear the search"));
  auto* line = new QHBoxLayout;
  line->addWidget(only_, 1);
  line->addWidget(all_);
  auto* left = new QWidget;
  auto* column = new QVBoxLayout(left);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(search_);
  column->addLayout(line);
  column->addWidget(table_, 1);
  setOnly({}, {});
  return left;
}

void FiguresWindow::fitColumns() {
  const auto wide = [this](const char* text) {
    return table_->fontMetrics().horizontalAdvance(QString::fromUtf8(text)) + 14;
  };
  table_->setColumnWidth(FiguresModel::axis, wide("Axis mm"));
  table_->setColumnWidth(FiguresModel::value, wide("−1234 N·m·s/rad"));
  table_->setColumnWidth(FiguresModel::doubt, wide("±1234 °/s²"));
}

void FiguresWindow::changeEvent(QEvent* event) {
  SeenDialog::changeEvent(event);
  if (event->type() == QEvent::FontChange && table_) fitColumns();
}

QWidget* FiguresWindow::makeText() {
  text_ = new QTextBrowser;
  text_->setObjectName(QStringLiteral("explanation"));
  text_->setAccessibleName(tr("Why"));
  text_->setOpenLinks(false);
  text_->setTextInteractionFlags(Qt::TextBrowserInteraction | Qt::TextSelectableByKeyboard);
  copy_ = textButton(tr("Copy"), tr("Copy the explanation as text"));
  help_ = textButton(tr("Handbook"), tr("Open the handbook where it speaks of this"));
  auto* close = textButton(tr("Close"), tr("Close this window"));
  connect(close, &QToolButton::clicked, this, &QWidget::hide);
  auto* line = new QHBoxLayout;
  line->addWidget(copy_);
  line->addWidget(help_);
  line->addStretch();
  line->addWidget(close);
  auto* right = new QWidget;
  auto* column = new QVBoxLayout(right);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(text_, 1);
  column->addLayout(line);
  return right;
}

void FiguresWindow::setResults(const Rig& rig, const std::shared_ptr<const Analysis>& analysis,
                               const std::shared_ptr<const Doubts>& doubts) {
  rig_ = rig;
  analysis_ = analysis;
  doubts_ = doubts;
  model_->setAnalysis(analysis, doubts);
  refresh();
}

void FiguresWindow::setOnly(const std::set<std::string>& ids, const QString& what) {
  model_->setOnly(ids);
  only_->setText(what);
  only_->setVisible(!what.isEmpty());
  all_->setVisible(!what.isEmpty());
}

void FiguresWindow::showAll() {
  setOnly({}, {});
  const int row = std::max(0, model_->rowOf(shown_));
  if (subject_ == Subject::figure || subject_ == Subject::nothing) table_->selectRow(row);
}

void FiguresWindow::explainSome(const std::vector<std::string>& ids, const QString& what) {
  if (ids.empty()) return showAll();
  search_->clear();
  setOnly({ids.begin(), ids.end()}, what);
  explainFigure(ids.front());
}

void FiguresWindow::explainFigure(const std::string& id) {
  if (model_->rowOf(id) < 0) {
    search_->clear();
    setOnly({}, {});
  }
  subject_ = Subject::figure;
  shown_ = id;
  const int row = model_->rowOf(id);
  if (row >= 0) {
    table_->selectRow(row);
    table_->scrollTo(model_->index(row, 0));
  }
  refresh();
}

void FiguresWindow::explainFinding(const std::string& id) {
  search_->clear();
  setOnly({}, {});
  table_->setCurrentIndex({});
  subject_ = Subject::finding;
  shown_ = id;
  refresh();
}

void FiguresWindow::explainField(const std::string& path) {
  if (!analysis_) return;
  search_->clear();
  std::set<std::string> ids;
  for (const Figure* figure : figures_on(rig_, *analysis_, path)) ids.insert(figure->id);
  setOnly(ids, ids.empty() ? QString() : tr("Figures that stand on it"));
  table_->setCurrentIndex({});
  subject_ = Subject::field;
  shown_ = path;
  refresh();
}

void FiguresWindow::currentChanged() {
  const Figure* figure = model_->figure(table_->currentIndex().row());
  if (!figure) return;
  subject_ = Subject::figure;
  shown_ = figure->id;
  refresh();
}

void FiguresWindow::refresh() {
  if (!analysis_) return;
  QString html;
  if (subject_ == Subject::figure) {
    if (const auto why = explain(rig_, *analysis_, shown_))
      html = explanation_of(*why, rig_, doubts_.get());
  } else if (subject_ == Subject::finding) {
    const auto at = std::ranges::find(analysis_->findings, shown_, &Finding::id);
    html = at == analysis_->findings.end()
               ? QStringLiteral("<p>%1</p>").arg(tr("This finding is not made any more."))
               : explanation_of(*at, rig_, *analysis_);
  } else if (subject_ == Subject::field) {
    html = explanation_of_field(rig_, *analysis_, shown_);
  } else {
    html = QStringLiteral("<p>%1</p>")
               .arg(tr("Choose a figure; its formula, inputs and source are shown here."));
  }
  help_->setEnabled(subject_ != Subject::nothing);
  copy_->setEnabled(subject_ != Subject::nothing);
  // Rich text takes the narrow no-break space for a plain one, at which a line may end.
  html.replace(QChar(0x202F), QChar(0x00A0));
  if (html == html_) return;
  html_ = html;
  const int at =
      std::exchange(in_text_, shown_) == shown_ ? text_->verticalScrollBar()->value() : 0;
  text_->setHtml(html);
  text_->verticalScrollBar()->setValue(at);
}

HelpPlace FiguresWindow::place() const {
  if (subject_ == Subject::finding) return help_for_finding(shown_);
  if (subject_ == Subject::field) return help_for_part(shown_);
  const Figure* figure = analysis_ ? analysis_->figure(shown_) : nullptr;
  return figure && figure->info ? help_for_figure(*figure->info)
                                : help_for_window(QStringLiteral("Figures"));
}

void FiguresWindow::follow(const QUrl& link) {
  if (link.scheme() == QStringLiteral("field")) emit fieldChosen(link.path());
  if (link.scheme() == QStringLiteral("figure")) explainFigure(link.path().toStdString());
  if (link.scheme() == QStringLiteral("handbook"))
    emit helpWanted({link.path(), link.fragment(QUrl::FullyDecoded)});
}

void FiguresWindow::copy() const {
  auto* mime = new QMimeData;
  mime->setText(text_->toPlainText());
  mime->setHtml(html_);
  QGuiApplication::clipboard()->setMimeData(mime);
}

bool FiguresWindow::eventFilter(QObject* watched, QEvent* event) {
  if (watched == table_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter) {
      text_->setFocus();
      return true;
    }
  }
  return SeenDialog::eventFilter(watched, event);
}

}  // namespace gazewright
