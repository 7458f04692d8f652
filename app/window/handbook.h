#pragma once

#include <QDialog>
#include <vector>

#include "app/window/handbook_text.h"
#include "app/window/help_places.h"

class QLabel;
class QLineEdit;
class QListWidget;
class QTextBrowser;

namespace gazewright {

/// The offline help: the Markdown pages of a folder beside a full-text search that marks what it
/// found. It opens at a page and section.
class Handbook : public QDialog {
  Q_OBJECT
 public:
  explicit Handbook(const QString& folder, QWidget* parent = nullptr);

  /// An empty section is the page's top. Where the page has no such heading, the first place that
  /// has these words; where there is no such page, the index.
  void open(const HelpPlace& place);
  QString page() const { return page_; }        ///< "motion.md"
  QString section() const { return section_; }  ///< the heading it was opened at
  const std::vector<HandbookPage>& pages() const { return pages_; }
  QLineEdit* search() const { return search_; }
  QListWidget* list() const { return list_; }
  QTextBrowser* text() const { return text_; }

 private:
  void fill();
  void choose(int row);
  void follow(const QUrl& link);
  bool goTo(const QString& section);
  void mark();
  void goToMark();

  std::vector<HandbookPage> pages_;
  QString page_, section_;
  QLineEdit* search_;
  QListWidget* list_;
  QLabel* count_;
  QTextBrowser* text_;
};

}  // namespace gazewright
