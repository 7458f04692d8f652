#include "app/window/doubts_dialog.h"

#include <QLabel>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/plots/doubt_text.h"
#include "app/window/doubts_model.h"
#include "app/window/explain_text.h"
#include "app/window/table_text.h"
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
    : ListDialog(new QTableView, QStringLiteral("doubts"), tr("Worth measuring"), parent),
      model_(new DoubtsModel(this)) {
  list()->setModel(model_);
  list()->setItemDelegateForColumn(DoubtsModel::share, new BarDelegate(this));
  layOutList();
  build();
  connect(list()->selectionModel(), &QItemSelectionModel::currentChanged, this,
          &DoubtsDialog::currentChanged);
  connect(figures_, &QToolButton::clicked, this, &DoubtsDialog::figuresAsked);
  resize(1180, 620);
  setStale();
}

void DoubtsDialog::build() {
  auto* hint = quietLabel(
      tr("Values that are not known exactly, the one most worth measuring first. Enter goes to its "
         "field."));
  figures_ = textButton(tr("All figures with ±"), tr("Every figure, with its ± and what moves it"),
                        QStringLiteral("doubts.figures"));
  auto* top = new QHBoxLayout;
  top->addWidget(hint, 1);
  top->addWidget(figures_);
  top->addWidget(copyButton());
  state_ = sentencesLabel(tr("State of the list"));
  state_->setObjectName(QStringLiteral("doubts.state"));
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
  layout->addWidget(list(), 1);
  layout->addWidget(sentence_);
  layout->addWidget(heading(tr("How far to trust the headline figures")));
  layout->addWidget(trust_);
  exact_ = quietLabel(QString());
  exact_->setObjectName(QStringLiteral("doubts.exact"));
  layout->addWidget(exact_);
}

void DoubtsDialog::fitColumns() {
  const auto wide = [this](const char* text) {
    return list()->fontMetrics().horizontalAdvance(QString::fromUtf8(text)) + 16;
  };
  list()->setColumnWidth(DoubtsModel::name, wide("Tilt gearbox: Coulomb friction"));
  list()->setColumnWidth(DoubtsModel::value, wide("1234 N·m·s/rad ±12 %"));
  list()->setColumnWidth(DoubtsModel::source, wide("datasheet; usual spread"));
  list()->setColumnWidth(DoubtsModel::share, wide("Share of the doubt"));
  list()->resizeRowsToContents();
}

void DoubtsDialog::setDoubts(std::shared_ptr<const Doubts> doubts, const Analysis& analysis) {
  const int before = list()->currentIndex().row();
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
  list()->setVisible(any);
  sentence_->setVisible(any);
  copyButton()->setEnabled(any);
  int row = 0;
  for (int i = 0; i < model_->rowCount(); ++i)
    if (model_->unknown(i).path == at) row = i;
  list()->resizeRowsToContents();
  if (any) list()->selectRow(row);
  currentChanged();
}

void DoubtsDialog::setStale() {
  const bool any = model_->rowCount() > 0;
  model_->setStale(true);
  copyButton()->setEnabled(false);
  trust_->clear();
  exact_->clear();
  sentence_->clear();
  empty_->hide();
  list()->setVisible(any);
  state_->setText(any ? tr("Of the rig before the last change; being worked out again.")
                      : tr("Being worked out."));
  state_->show();
}

void DoubtsDialog::setTheme(const Theme& theme) { model_->setTheme(theme); }

void DoubtsDialog::currentChanged() {
  const int row = list()->currentIndex().row();
  sentence_->setText(row < 0 ? QString() : QString::fromStdString(model_->worth(row).text));
}

std::string DoubtsDialog::pathAt(const QModelIndex& index) const {
  return model_->unknown(index.row()).path;
}

QString DoubtsDialog::text() const { return table_text(*model_); }

}  // namespace gazewright
