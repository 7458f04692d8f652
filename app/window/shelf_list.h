#pragma once

#include <QTreeWidget>
#include <optional>

#include "core/shelf/shelf.h"

namespace gazewright {

/// The kind of what is dragged from the shelf onto a drive line; its data is the entry's number.
inline constexpr const char* kPartMime = "application/x-gazewright-shelf-part";

QString kind_title(PartKind kind);  ///< "Motors"

/// The parts of the shelf by kind, with two or three figures each. A part is dragged from here;
/// F2 edits its name.
class ShelfList : public QTreeWidget {
  Q_OBJECT
 public:
  explicit ShelfList(QWidget* parent = nullptr);

  void setShelf(const Shelf& shelf);
  /// Shows the parts that hold every word; others are hidden.
  void setFilter(const QString& words);
  std::optional<std::size_t> current() const;  ///< entry of the shelf
  void choose(std::size_t entry);
  QTreeWidgetItem* item(std::size_t entry) const;  ///< null where there is none

 signals:
  void nameTyped(std::size_t entry, const QString& name);

 protected:
  QStringList mimeTypes() const override;
  QMimeData* mimeData(const QList<QTreeWidgetItem*>& items) const override;

 private:
  bool filling_ = false;
  QString filter_;
};

}  // namespace gazewright
