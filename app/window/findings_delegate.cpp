#include "app/window/findings_delegate.h"

#include <QMouseEvent>
#include <QPainter>
#include <QStyle>
#include <QWidget>
#include <algorithm>
#include <cmath>

#include "app/window/findings_model.h"

namespace gazewright {
namespace {

const FindingsModel& model_of(const QModelIndex& index) {
  return *static_cast<const FindingsModel*>(index.model());
}

}  // namespace

std::vector<FindingsDelegate::Pill> FindingsDelegate::pills(const QRect& cell,
                                                            const QFontMetrics& metrics,
                                                            const QModelIndex& index) const {
  std::vector<Pill> row;
  const auto& remedies = model_of(index).finding(index.row()).remedies;
  if (!model_of(index).remediesAreIn()) return row;
  constexpr int kPad = 7, kGap = 6;
  const int height = std::min(cell.height() - 2, metrics.height() + 4);
  const int top = cell.center().y() - height / 2 + 1;
  const QString more = tr("%1 more ▾");
  int x = cell.left() + 4;
  for (std::size_t i = 0; i < remedies.size(); ++i) {
    const bool last = i + 1 == remedies.size();
    const int left = static_cast<int>(remedies.size() - i);
    const int reserve = last ? 0 : metrics.horizontalAdvance(more.arg(left)) + 2 * kPad + kGap;
    QString text = QString::fromStdString(remedies[i].text);
    if (!remedies[i].is_free()) text.prepend(QStringLiteral("⚠ "));  // the price may be elided
    int width = metrics.horizontalAdvance(text) + 2 * kPad + 2;
    if (x + width + reserve > cell.right() && i > 0) {
      text = more.arg(left);
      width = metrics.horizontalAdvance(text) + 2 * kPad + 2;
      row.push_back({QRect(x, top, width, height), text, -1, true});
      return row;
    }
    width = std::min(width, cell.right() - x - reserve);
    text = metrics.elidedText(text, Qt::ElideRight, width - 2 * kPad);
    row.push_back(
        {QRect(x, top, width, height), text, static_cast<int>(i), !remedies[i].path.empty()});
    x += width + kGap;
  }
  return row;
}

void FindingsDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
  painter->setOpacity(dimmed_ ? 0.5 : 1.0);
  const bool hasPills = index.column() == FindingsModel::remedy &&
                        !model_of(index).finding(index.row()).remedies.empty() &&
                        model_of(index).remediesAreIn();
  if (index.column() != FindingsModel::bar && !hasPills) {
    paintText(*painter, option, index);
  } else {
    if (option.state & QStyle::State_Selected) painter->fillRect(option.rect, theme_.band);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (index.column() == FindingsModel::bar) {
      paintBar(*painter, option.rect, index);
    } else {
      paintPills(*painter, option, index);
    }
    painter->restore();
  }
  if (option.state & QStyle::State_HasFocus) {
    painter->setPen(QPen(theme_.focus, 1));
    painter->drawRect(option.rect.adjusted(0, 0, -1, -1));
  }
}

/// As the style does it, in a third of the time.
void FindingsDelegate::paintText(QPainter& painter, const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const {
  if (option.state & QStyle::State_Selected) painter.fillRect(option.rect, theme_.band);
  const QVariant own = index.data(Qt::FontRole);
  const QFont font = own.isValid() ? own.value<QFont>().resolve(option.font) : option.font;
  const int margin = option.widget->style()->pixelMetric(QStyle::PM_FocusFrameHMargin) + 1;
  const QRect inside = option.rect.adjusted(margin, 0, -margin, 0);
  painter.setFont(font);
  painter.setPen(index.data(Qt::ForegroundRole).value<QColor>());
  const auto alignment = index.data(Qt::TextAlignmentRole).value<Qt::Alignment>();
  painter.drawText(
      inside, int(alignment) | int(Qt::TextSingleLine) | int(Qt::TextForceLeftToRight),
      QFontMetrics(font).elidedText(index.data().toString(), option.textElideMode, inside.width()));
}

void FindingsDelegate::paintBar(QPainter& painter, const QRect& cell,
                                const QModelIndex& index) const {
  const Finding& finding = model_of(index).finding(index.row());
  const QRectF track = QRectF(cell).adjusted(4, 0, -4, 0);
  const double y = track.center().y(), zero = track.center().x(), half = track.width() / 2;
  painter.fillRect(QRectF(track.left(), y - 4, track.width(), 8), theme_.grid);
  if (finding.margin) {
    // Half the track is a margin of 50 %; what goes beyond is cut off and the number tells it.
    const double part = std::clamp(*finding.margin / 0.5, -1.0, 1.0) * half;
    painter.fillRect(QRectF(zero + std::min(0.0, part), y - 4, std::abs(part), 8),
                     verdict_colour(theme_, finding.verdict));
  }
  painter.setPen(QPen(theme_.control, 1));
  painter.drawLine(QPointF(zero, y - 7), QPointF(zero, y + 7));
}

void FindingsDelegate::paintPills(QPainter& painter, const QStyleOptionViewItem& option,
                                  const QModelIndex& index) const {
  painter.setFont(option.font);
  for (const Pill& pill : pills(option.rect, option.fontMetrics, index)) {
    painter.setPen(pill.applies ? QPen(theme_.control, 1) : QPen(Qt::NoPen));
    painter.setBrush(pill.applies ? QBrush(theme_.card) : QBrush(Qt::NoBrush));
    painter.drawRoundedRect(QRectF(pill.rect).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
    painter.setPen(theme_.text);
    painter.drawText(pill.rect, Qt::AlignCenter, pill.text);
  }
}

bool FindingsDelegate::editorEvent(QEvent* event, QAbstractItemModel* model,
                                   const QStyleOptionViewItem& option, const QModelIndex& index) {
  if (index.column() == FindingsModel::remedy && event->type() == QEvent::MouseButtonRelease) {
    const QPoint at = static_cast<QMouseEvent*>(event)->position().toPoint();
    for (const Pill& pill : pills(option.rect, option.fontMetrics, index)) {
      if (!pill.rect.contains(at) || !pill.applies) continue;
      emit remedyPressed(index.row(), pill.remedy);
      return true;
    }
  }
  return QStyledItemDelegate::editorEvent(event, model, option, index);
}

}  // namespace gazewright
