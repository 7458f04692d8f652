#include "app/window/list_dialog.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QShortcut>
#include <QTableView>
#include <QToolButton>

#include "app/window/widgets.h"

namespace gazewright {

ListDialog::ListDialog(QTableView* table, const QString& name, const QString& title,
                       QWidget* parent)
    : SeenDialog(parent), list_(table) {
  setObjectName(name);
  setWindowTitle(title);
  copy_ = textButton(tr("Copy the table"), tr("As text with tabs (Ctrl+C)"),
                     name + QStringLiteral(".copy"));
  list_->setObjectName(name + QStringLiteral(".table"));
  list_->setAccessibleName(title);
  connect(list_, &QTableView::clicked, this,
          [this](const QModelIndex& index) { choose(index, false); });
  connect(list_, &QTableView::doubleClicked, this,
          [this](const QModelIndex& index) { choose(index, true); });
  connect(copy_, &QToolButton::clicked, this, &ListDialog::copy);
  auto* help = new QShortcut(QKeySequence::HelpContents, this);
  connect(help, &QShortcut::activated, this, &ListDialog::helpWanted);
}

void ListDialog::layOutList() {
  list_->installEventFilter(this);  // sees a new font after the rows got their usual height
  showAsList(list_);
  list_->setWordWrap(true);
  QHeaderView* header = list_->horizontalHeader();
  header->setSectionResizeMode(QHeaderView::Interactive);
  header->setStretchLastSection(true);
  // Queued: the last column gets what is left once all others have their width.
  connect(header, &QHeaderView::sectionResized, list_, &QTableView::resizeRowsToContents,
          Qt::QueuedConnection);
  fitColumns();
}

void ListDialog::choose(const QModelIndex& index, bool goes) {
  if (!index.isValid()) return;
  if (const std::string path = pathAt(index); !path.empty())
    emit fieldChosen(QString::fromStdString(path), goes);
}

bool ListDialog::eventFilter(QObject* watched, QEvent* event) {
  if (watched == list_ && event->type() == QEvent::FontChange) {
    fitColumns();
    list_->resizeRowsToContents();
  }
  if (watched != list_ || event->type() != QEvent::KeyPress)
    return SeenDialog::eventFilter(watched, event);
  const auto* key = static_cast<QKeyEvent*>(event);
  if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
    choose(list_->currentIndex(), true);
  } else if (key->matches(QKeySequence::Copy) && copy_->isEnabled()) {
    copy();
  } else {
    return SeenDialog::eventFilter(watched, event);
  }
  return true;
}

void ListDialog::copy() const { QGuiApplication::clipboard()->setText(text()); }

}  // namespace gazewright
