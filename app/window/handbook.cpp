#include "app/window/handbook.h"

#include <QAbstractTextDocumentLayout>
#include <QDesktopServices>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QScrollBar>
#include <QSplitter>
#include <QTextBlock>
#include <QTextBrowser>
#include <QVBoxLayout>
#include <algorithm>

#include "app/window/search_words.h"
#include "app/window/widgets.h"

namespace gazewright {
namespace {

enum Role { page_role = Qt::UserRole, section_role };

constexpr int kMostMarks = 400;

}  // namespace

Handbook::Handbook(const QString& folder, QWidget* parent)
    : QDialog(parent), pages_(read_handbook(folder)) {
  setWindowTitle(tr("Handbook"));
  resize(940, 680);
  search_ = searchEdit(tr("Search all pages"), tr("Search all pages of the handbook"));
  list_ = new QListWidget;
  list_->setAccessibleName(tr("Pages"));
  count_ = quietLabel();
  text_ = new QTextBrowser;
  text_->setAccessibleName(tr("Page of the handbook"));
  text_->setOpenLinks(false);
  auto* left = new QWidget;
  auto* column = new QVBoxLayout(left);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(search_);
  column->addWidget(count_);
  column->addWidget(list_);
  auto* split = new QSplitter;
  split->addWidget(left);
  split->addWidget(text_);
  split->setStretchFactor(1, 1);
  split->setSizes({260, 680});
  split->setChildrenCollapsible(false);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(split);
  connect(search_, &QLineEdit::textChanged, this, &Handbook::fill);
  connect(search_, &QLineEdit::returnPressed, list_, qOverload<>(&QWidget::setFocus));
  connect(list_, &QListWidget::currentRowChanged, this, &Handbook::choose);
  connect(text_, &QTextBrowser::anchorClicked, this, &Handbook::follow);
  fill();
}

void Handbook::fill() {
  const QSignalBlocker quiet(list_);
  list_->clear();
  const auto add = [this](const QString& text, std::size_t page, const QString& section) {
    auto* item = new QListWidgetItem(text, list_);
    item->setData(page_role, static_cast<int>(page));
    item->setData(section_role, section);
  };
  const bool searching = !words_of_search(search_->text()).isEmpty();
  if (searching) {
    for (const HandbookHit& hit : search_handbook(pages_, search_->text())) {
      const HandbookPage& page = pages_[hit.page];
      const QString& section = page.sections[hit.section].title;
      add(hit.section == 0 ? page.title
                           : page.title.section(':', 0, 0) + QStringLiteral(" › ") + section,
          hit.page, hit.section == 0 ? QString() : section);
    }
    count_->setText(list_->count() == 0 ? tr("Nothing found; fewer or shorter words find more.")
                                        : tr("Found in: %n sections", nullptr, list_->count()));
  } else {
    for (std::size_t i = 0; i < pages_.size(); ++i) add(pages_[i].title, i, {});
    count_->setText(tr("Pages: %1").arg(list_->count()));
  }
  int row = 0;
  for (int i = 0; !searching && i < list_->count(); ++i) {
    if (pages_[list_->item(i)->data(page_role).toUInt()].file == page_) row = i;
  }
  list_->setCurrentRow(row);
  choose(list_->count() == 0 ? -1 : row);
}

void Handbook::choose(int row) {
  const QListWidgetItem* item = list_->item(row);
  if (!item) return mark();
  open({pages_[item->data(page_role).toUInt()].file, item->data(section_role).toString()});
}

void Handbook::open(const HelpPlace& place) {
  auto at = std::ranges::find(pages_, place.page, &HandbookPage::file);
  if (at == pages_.end()) at = pages_.begin();
  if (at == pages_.end()) {
    text_->setPlainText(tr("The handbook is not installed."));
    return;
  }
  if (page_ != at->file || text_->document()->isEmpty()) {
    page_ = at->file;
    text_->setMarkdown(at->text);
    if (search_->text().isEmpty()) {
      const QSignalBlocker quiet(list_);
      list_->setCurrentRow(static_cast<int>(at - pages_.begin()));
    }
  }
  mark();
  section_ = !place.section.isEmpty() && goTo(place.section) ? place.section : QString();
  if (section_.isEmpty()) {
    text_->moveCursor(QTextCursor::Start);
    text_->verticalScrollBar()->setValue(0);
  }
  goToMark();
}

/// To the first place that was found, in the section that is open.
void Handbook::goToMark() {
  const int from = text_->textCursor().position();
  int first = -1;
  for (const QTextEdit::ExtraSelection& mark : text_->extraSelections()) {
    const int at = mark.cursor.selectionStart();
    if (at >= from && (first < 0 || at < first)) first = at;
  }
  if (first < 0) return;
  QTextCursor cursor = text_->textCursor();
  cursor.setPosition(first);
  text_->setTextCursor(cursor);
  text_->ensureCursorVisible();
}

bool Handbook::goTo(const QString& section) {
  QTextBlock found;
  for (QTextBlock block = text_->document()->begin(); block.isValid(); block = block.next()) {
    const bool heading = block.blockFormat().headingLevel() > 0;
    if (heading && block.text().compare(section, Qt::CaseInsensitive) == 0) {
      found = block;
      break;
    }
    if (!found.isValid() && block.text().contains(section, Qt::CaseInsensitive)) found = block;
  }
  if (!found.isValid()) return false;
  QTextCursor cursor(found);
  text_->setTextCursor(cursor);
  const QRectF at = text_->document()->documentLayout()->blockBoundingRect(found);
  text_->verticalScrollBar()->setValue(static_cast<int>(at.top()));
  return true;
}

void Handbook::mark() {
  QList<QTextEdit::ExtraSelection> marks;
  QTextCharFormat format;
  format.setBackground(palette().color(QPalette::Highlight));
  format.setForeground(palette().color(QPalette::HighlightedText));
  for (const QString& word : words_of_search(search_->text())) {
    for (QTextCursor at = text_->document()->find(word); !at.isNull() && marks.size() < kMostMarks;
         at = text_->document()->find(word, at)) {
      marks.push_back({at, format});
    }
  }
  text_->setExtraSelections(marks);
}

void Handbook::follow(const QUrl& link) {
  if (link.scheme().startsWith(QStringLiteral("http"))) {
    QDesktopServices::openUrl(link);
    return;
  }
  const QString section = link.fragment().replace('-', ' ');
  open({link.path().isEmpty() ? page_ : link.path(), section});
}

}  // namespace gazewright
