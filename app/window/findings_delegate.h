#pragma once

#include <QStyledItemDelegate>
#include <vector>

#include "app/plots/theme.h"

namespace gazewright {

/// Paints the bar around zero and the remedies as buttons, and tells which one was pressed.
class FindingsDelegate : public QStyledItemDelegate {
  Q_OBJECT
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void setTheme(const Theme& theme) { theme_ = theme; }
  void setDimmed(bool dimmed) { dimmed_ = dimmed; }  ///< the findings are behind the rig

  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override;
  bool editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                   const QModelIndex& index) override;

  /// Where the remedies of a row are; the last may stand for all that found no room (index −1).
  struct Pill {
    QRect rect;
    QString text;
    int remedy = 0;
    bool applies = true;
  };
  std::vector<Pill> pills(const QRect& cell, const QFontMetrics& metrics,
                          const QModelIndex& index) const;

 signals:
  void remedyPressed(int row, int remedy);  ///< remedy −1: ask which

 private:
  void paintText(QPainter& painter, const QStyleOptionViewItem& option,
                 const QModelIndex& index) const;
  void paintBar(QPainter& painter, const QRect& cell, const QModelIndex& index) const;
  void paintPills(QPainter& painter, const QStyleOptionViewItem& option,
                  const QModelIndex& index) const;

  bool dimmed_ = false;
  Theme theme_ = theme_for(ThemeKind::light);
};

}  // namespace gazewright
