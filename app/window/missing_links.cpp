#include "app/window/missing_links.h"

#include <QCoreApplication>
#include <QTextDocumentFragment>
#include <algorithm>

#include "app/plots/text.h"
#include "app/window/parts.h"

namespace gazewright {
namespace {

QString tr(const char* text, int count = -1) {
  return QCoreApplication::translate("Missing", text, nullptr, count);
}

/// "rotor inertia"; "the bodies that turn with tilt".
QString entry_text(const MissingEntry& entry) {
  if (entry.path == "on_tilt") return tr("the bodies that turn with tilt");
  if (entry.path == "on_pan") return tr("the bodies that turn with pan");
  return mid_sentence(QString::fromStdString(missing_entry_words(entry)));
}

QString link_to(const MissingEntry& entry, bool counted) {
  const QString link = QStringLiteral("<a href=\"%1\">%2</a>")
                           .arg(QString::fromStdString(entry.path).toHtmlEscaped(),
                                entry_text(entry).toHtmlEscaped());
  return counted ? QStringLiteral("%1 (%2)").arg(link).arg(entry.waiting()) : link;
}

struct OnCard {
  std::string card;
  QStringList links;
};

}  // namespace

QString missing_links(const Rig& rig, std::span<const MissingEntry> entries, bool counted) {
  std::vector<OnCard> cards;
  for (const MissingEntry& entry : entries) {
    const std::string card = card_of(entry.path);
    auto at = std::ranges::find(cards, card, &OnCard::card);
    if (at == cards.end()) at = cards.insert(at, {card, {}});
    at->links << link_to(entry, counted);
  }
  QStringList lines;
  for (const OnCard& card : cards)
    lines << QStringLiteral("<b>%1:</b> %2")
                 .arg(part_title(rig, card.card).toHtmlEscaped(),
                      card.links.join(QStringLiteral(", ")));
  return lines.join(QStringLiteral(" &nbsp;·&nbsp; "));
}

QString missing_links(const Rig& rig, std::span<const std::string> paths) {
  std::vector<MissingEntry> entries;
  for (const std::string& path : paths) entries.push_back({path, card_of(path)});
  return missing_links(rig, entries, false);
}

QString waiting_text(std::size_t figures, std::size_t findings) {
  QStringList parts;
  if (figures > 0) parts << tr("%n figures", static_cast<int>(figures));
  if (findings > 0) parts << tr("%n findings", static_cast<int>(findings));
  return parts.join(QStringLiteral(", "));
}

QLabel* linksLabel(const QString& name) {
  auto* label = new QLabel;
  label->setAccessibleName(name);
  label->setWordWrap(true);
  label->setTextFormat(Qt::RichText);
  label->setTextInteractionFlags(Qt::TextBrowserInteraction | Qt::LinksAccessibleByKeyboard);
  return label;
}

QString plain_text(const QLabel& label) {
  return QTextDocumentFragment::fromHtml(label.text()).toPlainText();
}

}  // namespace gazewright
