#include "app/window/shelf_list.h"

#include <QHeaderView>
#include <QMimeData>

#include "app/plots/text.h"
#include "app/window/search_words.h"

namespace gazewright {
namespace {

constexpr int kEntry = Qt::UserRole;

QString figures_of(const ShelfPart& part) {
  QStringList figures;
  for (const std::string& figure : telling_figures(part)) figures << QString::fromStdString(figure);
  return figures.join(QStringLiteral(", "));
}

QString labels_of(PartKind kind) {
  QStringList labels;
  for (const std::string_view label : telling_labels(kind)) labels << worded(label);
  return labels.join(QStringLiteral(", "));
}

}  // namespace

QString kind_title(PartKind kind) {
  switch (kind) {
    case PartKind::motor:
      return ShelfList::tr("Motors");
    case PartKind::gearbox:
      return ShelfList::tr("Gearboxes");
    case PartKind::drive:
      return ShelfList::tr("Drives");
    case PartKind::bearing:
      return ShelfList::tr("Bearings");
    case PartKind::cable:
      return ShelfList::tr("Cables");
    case PartKind::camera:
      return ShelfList::tr("Cameras");
    case PartKind::supply:
      return ShelfList::tr("Supplies");
  }
  return {};
}

ShelfList::ShelfList(QWidget* parent) : QTreeWidget(parent) {
  setObjectName(QStringLiteral("shelf list"));
  setAccessibleName(tr("Parts of the shelf"));
  setHeaderLabels({tr("Part"), tr("Figures")});
  header()->setStretchLastSection(true);
  setUniformRowHeights(true);
  setRootIsDecorated(true);
  setDragEnabled(true);
  setDragDropMode(QAbstractItemView::DragOnly);
  setEditTriggers(QAbstractItemView::EditKeyPressed);
  connect(this, &QTreeWidget::itemChanged, this, [this](QTreeWidgetItem* changed, int column) {
    if (filling_ || column != 0 || !changed->data(0, kEntry).isValid()) return;
    emit nameTyped(changed->data(0, kEntry).toULongLong(), changed->text(0).trimmed());
  });
}

void ShelfList::setShelf(const Shelf& shelf) {
  const QTreeWidgetItem* before = currentItem();
  const QString name = before ? before->text(0) : QString();
  filling_ = true;
  clear();
  for (const PartKind kind : kPartKinds) {
    const auto entries = shelf.of(kind);
    if (entries.empty()) continue;
    auto* group = new QTreeWidgetItem(this, {kind_title(kind), labels_of(kind)});
    QFont bold;  // only that, the rest is the list's
    bold.setBold(true);
    group->setFont(0, bold);
    group->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    for (const std::size_t entry : entries) {
      const ShelfPart& part = shelf.entries[entry].part;
      auto* row = new QTreeWidgetItem(group, {QString::fromStdString(part.name), figures_of(part)});
      row->setData(0, kEntry, QVariant::fromValue<qulonglong>(entry));
      row->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsDragEnabled |
                    Qt::ItemIsEditable);
      row->setToolTip(0, QString::fromStdString(part.note));
      if (row->text(0) == name) setCurrentItem(row);
    }
    group->setExpanded(true);
  }
  filling_ = false;
  setFilter(filter_);
  resizeColumnToContents(0);
}

void ShelfList::setFilter(const QString& words) {
  filter_ = words;
  const QStringList wanted = words_of_search(words);
  for (int g = 0; g < topLevelItemCount(); ++g) {
    QTreeWidgetItem* group = topLevelItem(g);
    bool is_any = false;
    for (int i = 0; i < group->childCount(); ++i) {
      QTreeWidgetItem* row = group->child(i);
      const bool shows =
          has_words(group->text(0) + ' ' + row->text(0) + ' ' + row->text(1), wanted);
      row->setHidden(!shows);
      is_any = is_any || shows;
    }
    group->setHidden(!is_any);
  }
}

std::optional<std::size_t> ShelfList::current() const {
  const QTreeWidgetItem* row = currentItem();
  if (!row || row->isHidden() || !row->data(0, kEntry).isValid()) return std::nullopt;
  return row->data(0, kEntry).toULongLong();
}

QTreeWidgetItem* ShelfList::item(std::size_t entry) const {
  for (int g = 0; g < topLevelItemCount(); ++g)
    for (int i = 0; i < topLevelItem(g)->childCount(); ++i) {
      QTreeWidgetItem* row = topLevelItem(g)->child(i);
      if (row->data(0, kEntry).toULongLong() == entry) return row;
    }
  return nullptr;
}

void ShelfList::choose(std::size_t entry) {
  if (QTreeWidgetItem* row = item(entry)) setCurrentItem(row);
}

QStringList ShelfList::mimeTypes() const { return {QString::fromLatin1(kPartMime)}; }

QMimeData* ShelfList::mimeData(const QList<QTreeWidgetItem*>& items) const {
  if (items.isEmpty() || !items.front()->data(0, kEntry).isValid()) return nullptr;
  auto* mime = new QMimeData;
  mime->setData(QString::fromLatin1(kPartMime),
                QByteArray::number(items.front()->data(0, kEntry).toULongLong()));
  mime->setText(items.front()->text(0));
  return mime;
}

}  // namespace gazewright
