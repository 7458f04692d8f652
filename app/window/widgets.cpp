#include "app/window/widgets.h"

#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QStyle>
#include <QTableView>
#include <QToolButton>
#include <QWheelEvent>

namespace gazewright {
namespace {

/// Leaves the wheel to what lies around a control that has no focus.
class WheelGuard : public QObject {
 public:
  using QObject::QObject;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() != QEvent::Wheel || static_cast<QWidget*>(watched)->hasFocus()) return false;
    event->ignore();
    return true;
  }
};

/// Sets the height of a table's rows whenever its font is another.
class RowsALine : public QObject {
 public:
  RowsALine(QTableView* table, int pad_px) : QObject(table), table_(table), pad_px_(pad_px) {
    table->installEventFilter(this);
    fit();
  }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::FontChange) fit();
    return QObject::eventFilter(watched, event);
  }

 private:
  void fit() {
    table_->verticalHeader()->setDefaultSectionSize(table_->fontMetrics().height() + pad_px_);
  }

  QTableView* table_;
  int pad_px_;
};

}  // namespace

ElidedLabel::ElidedLabel() {
  setKind(this, "note");
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
}

void ElidedLabel::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const QString shown = fontMetrics().elidedText(text(), Qt::ElideRight, width());
  setToolTip(shown == text() ? QString() : QStringLiteral("<p>%1</p>").arg(text().toHtmlEscaped()));
  painter.drawText(rect(), static_cast<int>(alignment()), shown);
}

void setKind(QWidget* widget, const char* kind) {
  if (widget->property("kind").toByteArray() == kind) return;
  widget->setProperty("kind", QByteArray(kind));
  widget->style()->unpolish(widget);
  widget->style()->polish(widget);
}

void keepWheelAway(QWidget* control) {
  control->setFocusPolicy(Qt::StrongFocus);
  control->installEventFilter(new WheelGuard(control));
}

QComboBox* calmCombo(const QStringList& words) {
  auto* combo = calmed(new QComboBox);
  combo->addItems(words);
  combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  combo->setMinimumContentsLength(6);
  return combo;
}

QComboBox* quietCombo(const QStringList& words) {
  QComboBox* combo = calmCombo(words);
  combo->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  setKind(combo, "quiet");
  return combo;
}

QLineEdit* quietEdit() {
  auto* edit = new QLineEdit;
  setKind(edit, "quiet");
  return edit;
}

QLineEdit* searchEdit(const QString& hint, const QString& name) {
  auto* edit = new QLineEdit;
  edit->setPlaceholderText(hint);
  edit->setAccessibleName(name);
  edit->setClearButtonEnabled(true);
  return edit;
}

QLabel* heading(const QString& text) {
  auto* label = new QLabel(text);
  setKind(label, "heading");
  return label;
}

QLabel* quietLabel(const QString& text) {
  auto* label = new QLabel(text);
  setKind(label, "note");
  return label;
}

QLabel* sentencesLabel(const QString& name) {
  auto* label = new QLabel;
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  label->setAccessibleName(name);
  return label;
}

QToolButton* textButton(const QString& text, const QString& help, const QString& name) {
  auto* button = new QToolButton;
  button->setObjectName(name);
  button->setText(text);
  button->setToolTip(help);
  button->setAccessibleDescription(help);
  button->setFocusPolicy(Qt::StrongFocus);
  setKind(button, "pill");
  return button;
}

QFrame* cardFrame() {
  auto* frame = new QFrame;
  setKind(frame, "card");
  return frame;
}

void keepRowsALine(QTableView* table, int pad_px) { new RowsALine(table, pad_px); }

void showAsList(QTableView* table, int pad_px) {
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setSelectionMode(QAbstractItemView::SingleSelection);
  table->setShowGrid(false);
  table->setTabKeyNavigation(false);
  table->setWordWrap(false);
  table->verticalHeader()->hide();
  keepRowsALine(table, pad_px);
  table->horizontalHeader()->setHighlightSections(false);
}

}  // namespace gazewright
