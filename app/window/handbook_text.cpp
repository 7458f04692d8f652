#include "app/window/handbook_text.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <algorithm>

#include "app/window/search_words.h"

namespace gazewright {
namespace {

QString text_of(const QString& path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

/// The words of a heading line, or nothing where the line is none.
QString heading_of(const QString& line) {
  static const QRegularExpression heading(QStringLiteral("^#{1,4} +(.*)$"));
  const auto match = heading.match(line);
  return match.hasMatch() ? match.captured(1).remove('`').trimmed() : QString();
}

/// Places of all words in a section, those in its heading ten times; 0 where a word is not there.
int places_of(const HandbookSection& section, const QStringList& words) {
  qsizetype places = 0;
  for (const QString& word : words) {
    const qsizetype in_text = section.text.count(word, Qt::CaseInsensitive);
    const qsizetype in_title = section.title.count(word, Qt::CaseInsensitive);
    if (in_text + in_title == 0) return 0;
    places += in_text + 10 * in_title;
  }
  return static_cast<int>(places);
}

}  // namespace

std::vector<HandbookSection> sections_of(const QString& markdown) {
  std::vector<HandbookSection> sections;
  bool code = false;
  for (const QString& line : markdown.split('\n')) {
    if (line.startsWith(QStringLiteral("```"))) code = !code;
    const QString heading = code ? QString() : heading_of(line);
    if (!heading.isEmpty()) {
      sections.push_back({heading, {}});
    } else if (!sections.empty()) {
      sections.back().text += line + '\n';
    }
  }
  return sections;
}

std::vector<HandbookPage> read_handbook(const QString& folder) {
  std::vector<HandbookPage> pages;
  for (const QFileInfo& entry :
       QDir(folder).entryInfoList({QStringLiteral("*.md")}, QDir::Files, QDir::Name)) {
    HandbookPage page{
        entry.fileName(), entry.completeBaseName(), text_of(entry.absoluteFilePath()), {}};
    page.sections = sections_of(page.text);
    if (!page.sections.empty()) page.title = page.sections.front().title;
    pages.push_back(std::move(page));
  }
  std::ranges::stable_sort(pages, {}, [](const HandbookPage& page) {
    return (page.file == QStringLiteral("index.md") ? QStringLiteral(" ") : QString()) + page.title;
  });
  return pages;
}

std::vector<HandbookHit> search_handbook(const std::vector<HandbookPage>& pages,
                                         const QString& words) {
  std::vector<HandbookHit> hits;
  const QStringList wanted = words_of_search(words);
  if (wanted.isEmpty()) return hits;
  for (std::size_t page = 0; page < pages.size(); ++page) {
    for (std::size_t at = 0; at < pages[page].sections.size(); ++at) {
      const int places = places_of(pages[page].sections[at], wanted);
      if (places > 0) hits.push_back({page, at, places});
    }
  }
  std::ranges::stable_sort(hits, std::ranges::greater(), &HandbookHit::places);
  return hits;
}

}  // namespace gazewright
