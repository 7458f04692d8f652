#pragma once

#include <QString>
#include <vector>

namespace gazewright {

/// A heading of a page with the text up to the next heading.
struct HandbookSection {
  QString title;  ///< as shown, without marks
  QString text;
};
struct HandbookPage {
  QString file;                           ///< "motion.md"
  QString title;                          ///< its first heading
  QString text;                           ///< Markdown
  std::vector<HandbookSection> sections;  ///< the first is that of the title
};

/// All pages of a folder, the index first, else by title.
std::vector<HandbookPage> read_handbook(const QString& folder);
std::vector<HandbookSection> sections_of(const QString& markdown);

/// Sections that have every word of a search, with the number of places; the best first.
struct HandbookHit {
  std::size_t page = 0, section = 0;
  int places = 0;
};
std::vector<HandbookHit> search_handbook(const std::vector<HandbookPage>& pages,
                                         const QString& words);

}  // namespace gazewright
