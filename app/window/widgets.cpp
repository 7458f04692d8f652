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

class CalmCombo : public QComboBox {
 public:
  CalmCombo() { setFocusPolicy(Qt::StrongFocus); }

 protected:
  void wheelEvent(QWheelEvent* event) override {
    if (hasFocus()) {
      QComboBox::wheelEvent(event);
    } else {
      event->ignore();
    }
  }
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

QComboBox* calmCombo(const QStringList& words) {
  auto* combo = new CalmCombo;
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

void showAsList(QTableView* table, int pad_px) {
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setSelectionMode(QAbstractItemView::SingleSelection);
  table->setShowGrid(false);
  table->setTabKeyNavigation(false);
  table->setWordWrap(false);
  table->verticalHeader()->hide();
  table->verticalHeader()->setDefaultSectionSize(table->fontMetrics().height() + pad_px);
  table->horizontalHeader()->setHighlightSections(false);
}

}  // namespace gazewright
