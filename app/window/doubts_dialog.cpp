#include "app/window/doubts_dialog.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QShortcut>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/plots/doubt_text.h"
#include "app/window/doubts_model.h"
#include "app/window/explain_text.h"
#include "app/window/widgets.h"

namespace gazewright {
namespace {

/// A bar before the number; the largest share fills its room.
class BarDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override {
    const auto& model = *static_cast<const DoubtsModel*>(index.model());
    const int text = option.fontMetrics.horizontalAdvance(QStringLiteral("< 100 %")) + 10;
    QStyleOptionViewItem beside = option;
    beside.rect.setLeft(option.rect.right() - text);
    if (option.state & QStyle::State_Selected)
      painter->fillRect(option.rect, option.palette.highlight());
    QStyledItemDelegate::paint(painter, beside, index);
    const QRectF room = QRectF(option.rect).adjusted(6, 0, -text - 4, 0);
    const double part = model.worth(index.row()).share / std::max(1e-12, model.largestShare());
    const QRectF bar(room.left(), room.center().y() - 4, std::max(1.0, part * room.width()), 8);
    painter->fillRect(bar, model.theme().control);
  }
};

/// A table of name, value and ±, two figures a row.
QString trust_text(const Doubts& doubts, const Analysis& analysis) {
  QStringList cells;
  for (const DoubtedFigure& doubted : doubts.figures) {
    const Figure* figure = analysis.figure(doubted.id);
    if (figure == nullptr || figure->info == nullptr || !matters(doubted)) continue;
    QString cell;
    for (const QString& text :
         {figure_name(*figure), figure_value(*figure), plus_minus(doubts, analysis, doubted.id)}) {
      cell += QStringLiteral("<td>%1&nbsp;&nbsp;&nbsp;</td>").arg(text.toHtmlEscaped());
    }
    cells << cell;
  }
  QString rows;
  const qsizetype high = (cells.size() + 1) / 2;
  for (qsizetype i = 0; i < high; ++i)
    rows += QStringLiteral("<tr>%1%2</tr>").arg(cells[i], cells.value(i + high));
  return QStringLiteral("<table>%1</table>").arg(rows);
}

}  // namespace

DoubtsDialog::DoubtsDialog(QWidget* parent)
    : SeenDialog(parent), model_(new DoubtsModel(this)), table_(new QTableView) {
  setObjectName(QStringLiteral("doubts"));
  setWindowTitle(tr("Worth measuring"));
  build();
  connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this,
          &DoubtsDialog::currentChanged);
  connect(table_, &QTableView::clicked, this,
          [this](const QModelIndex& index) { choose(index.row(), false); });
  connect(table_, &QTableView::doubleClicked, this,
          [this](const QModelIndex& index) { choose(index.row(), true); });
  connect(figures_, &QToolButton::clicked, this, &DoubtsDialog::figuresAsked);
  connect(copy_, &QToolButton::clicked, this, &DoubtsDialog::copy);
  auto* help = new QShortcut(QKeySequence::HelpContents, this);
  connect(help, &QShortcut::activated, this, &DoubtsDialog::helpWanted);
  resize(1180, 620);
  setStale();
}

void DoubtsDialog::build() {
  auto* hint = quietLabel(
      tr("Values that are not known exactly, the one most worth measuring first. Enter goes to its "
         "field."));
  figures_ = textButton(tr("All figures with ±"), tr("Every figure, with its ± and what moves it"),
                        QStringLiteral("doubts.figures"));
  copy_ = textButton(tr("Copy the table"), tr("As text with tabs (Ctrl+C)"),
                     QStringLiteral("doubts.copy"));
  auto* top = new QHBoxLayout;
  top->addWidget(hint, 1);
  top->addWidget(figures_);
  top->addWidget(copy_);
  state_ = sentencesLabel(tr("State of the list"));
  state_->setObjectName(QStringLiteral("doubts.state"));
  buildTable();
  empty_ = quietLabel(QString());
  empty_->setObjectName(QStringLiteral("doubts.empty"));
  empty_->setWordWrap(true);
  sentence_ = sentencesLabel(tr("What measuring the chosen value tells"));
  sentence_->setObjectName(QStringLiteral("doubts.sentence"));
  trust_ = sentencesLabel(tr("How far the headline figures can be trusted"));
  trust_->setObjectName(QStringLiteral("doubts.trust"));
  trust_->setTextFormat(Qt::RichText);
  trust_->setToolTip(QStringLiteral("<p>%1</p>").arg(plus_minus_meaning().toHtmlEscaped()));
  auto* layout = new QVBoxLayout(this);
  layout->addLayout(top);
  layout->addWidget(state_);
  layout->addWidget(empty_, 1, Qt::AlignTop);
  layout->addWidget(table_, 1);
  layout->addWidget(sentence_);
  layout->addWidget(heading(tr("How far to trust the headline figures")));
  layout->addWidget(trust_);
  exact_ = quietLabel(QString());
  exact_->setObjectName(QStringLiteral("doubts.exact"));
  layout->addWidget(exact_);
}

void DoubtsDialog::buildTable() {
  table_->setObjectName(QStringLiteral("doubts.table"));
  table_->setAccessibleName(tr("Worth measuring"));
  table_->setModel(model_);
  table_->setItemDelegateForColumn(DoubtsModel::share, new BarDelegate(this));
  table_->installEventFilter(this);  // sees a new font after the rows got their usual height
  showAsList(table_);
  table_->setWordWrap(true);
  QHeaderView* header = table_->horizontalHeader();
  header->setSectionResizeMode(QHeaderView::Interactive);
  header->setStretchLastSection(true);
  connect(header, &QHeaderView::sectionResized, table_, &QTableView::resizeRowsToContents);
  fitColumns();
}

/// After a change of the text size too.
void DoubtsDialog::fitColumns() {
  const auto wide = [this](const char* text) {
    return table_->fontMetrics().horizontalAdvance(QString::fromUtf8(text)) + 16;
  };
  table_->setColumnWidth(DoubtsModel::name, wide("Tilt gearbox: Coulomb friction"));
  table_->setColumnWidth(DoubtsModel::value, wide("1234 N·m·s/rad ±12 %"));
  table_->setColumnWidth(DoubtsModel::source, wide("datasheet; usual spread"));
  table_->setColumnWidth(DoubtsModel::share, wide("Share of the doubt"));
  table_->resizeRowsToContents();
}

void DoubtsDialog::setDoubts(std::shared_ptr<const Doubts> doubts, const Analysis& analysis) {
  const int before = table_->currentIndex().row();
  const std::string at = before < 0 ? std::string() : model_->unknown(before).path;
  trust_->setText(trust_text(*doubts, analysis));
  exact_->setText(QString::fromStdString(say_exact(*doubts)));
  empty_->setText(tr("Nothing to rank: %1. State a source or a spread beside a value in its card, "
                     "such as “estimate” or “± 10 %”; its doubt is then counted.")
                      .arg(QString::fromStdString(why_none_worth(*doubts))));
  model_->setDoubts(std::move(doubts));
  const bool any = model_->rowCount() > 0;
  state_->hide();
  empty_->setVisible(!any);
  table_->setVisible(any);
  sentence_->setVisible(any);
  copy_->setEnabled(any);
  int row = 0;
  for (int i = 0; i < model_->rowCount(); ++i)
    if (model_->unknown(i).path == at) row = i;
  table_->resizeRowsToContents();
  if (any) table_->selectRow(row);
  currentChanged();
}

void DoubtsDialog::setStale() {
  const bool any = model_->rowCount() > 0;
  model_->setStale(true);
  copy_->setEnabled(false);
  trust_->clear();
  exact_->clear();
  sentence_->clear();
  empty_->hide();
  table_->setVisible(any);
  state_->setText(any ? tr("Of the rig before the last change; being worked out again.")
                      : tr("Being worked out."));
  state_->show();
}

void DoubtsDialog::setTheme(const Theme& theme) { model_->setTheme(theme); }

void DoubtsDialog::currentChanged() {
  const int row = table_->currentIndex().row();
  sentence_->setText(row < 0 ? QString() : QString::fromStdString(model_->worth(row).text));
}

void DoubtsDialog::choose(int row, bool goes) {
  if (row >= 0) emit fieldChosen(QString::fromStdString(model_->unknown(row).path), goes);
}

bool DoubtsDialog::eventFilter(QObject* watched, QEvent* event) {
  if (watched == table_ && event->type() == QEvent::FontChange) fitColumns();
  if (watched != table_ || event->type() != QEvent::KeyPress)
    return SeenDialog::eventFilter(watched, event);
  const auto* key = static_cast<QKeyEvent*>(event);
  if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
    choose(table_->currentIndex().row(), true);
  } else if (key->matches(QKeySequence::Copy) && copy_->isEnabled()) {
    copy();
  } else {
    return SeenDialog::eventFilter(watched, event);
  }
  return true;
}

void DoubtsDialog::copy() const { QGuiApplication::clipboard()->setText(model_->asText()); }

}  // namespace gazewright
