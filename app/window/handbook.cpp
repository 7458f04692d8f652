#include "app/window/handbook.h"

#include <QDir>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QSplitter>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace gazewright {
namespace {

QString text_of(const QString& path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

/// The first heading of a page, or its file name.
QString title_of(const QString& path, const QString& text) {
  const QString first = text.section('\n', 0, 0);
  return first.startsWith('#') ? first.mid(first.indexOf(' ') + 1)
                               : QFileInfo(path).completeBaseName();
}

}  // namespace

Handbook::Handbook(const QString& folder, QWidget* parent) : QDialog(parent), folder_(folder) {
  setWindowTitle(tr("Handbook"));
  resize(900, 640);
  search_ = new QLineEdit;
  search_->setPlaceholderText(tr("Search all pages"));
  search_->setClearButtonEnabled(true);
  pages_ = new QListWidget;
  pages_->setAccessibleName(tr("Pages"));
  text_ = new QTextBrowser;
  text_->setOpenExternalLinks(true);
  auto* left = new QWidget;
  auto* column = new QVBoxLayout(left);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(search_);
  column->addWidget(pages_);
  auto* split = new QSplitter;
  split->addWidget(left);
  split->addWidget(text_);
  split->setStretchFactor(1, 1);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(split);
  connect(search_, &QLineEdit::textChanged, this, &Handbook::fill);
  connect(pages_, &QListWidget::currentItemChanged, this, [this](const QListWidgetItem* item) {
    if (!item) return;
    text_->setMarkdown(text_of(item->data(Qt::UserRole).toString()));
    if (!search_->text().isEmpty()) text_->find(search_->text());
  });
  fill({});
}

void Handbook::fill(const QString& search) {
  pages_->clear();
  for (const QFileInfo& entry :
       QDir(folder_).entryInfoList({QStringLiteral("*.md")}, QDir::Files, QDir::Name)) {
    const QString text = text_of(entry.absoluteFilePath());
    if (!search.isEmpty() && !text.contains(search, Qt::CaseInsensitive)) continue;
    auto* item = new QListWidgetItem(title_of(entry.filePath(), text), pages_);
    item->setData(Qt::UserRole, entry.absoluteFilePath());
  }
  pages_->setCurrentRow(0);
}

}  // namespace gazewright
