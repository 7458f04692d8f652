#include "app/window/widgets.h"

#include <QComboBox>
#include <QHeaderView>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPlainTextEdit>
#include <QStyle>
#include <QStyleOptionToolButton>
#include <QStylePainter>
#include <QTableView>
#include <QToolButton>
#include <QToolTip>
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

class UndoGuard : public QObject {
 public:
  using QObject::QObject;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() != QEvent::ShortcutOverride) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool is_undo = key->matches(QKeySequence::Undo);
    if ((!is_undo && !key->matches(QKeySequence::Redo)) || hasOwn(watched, is_undo)) return false;
    event->ignore();
    return true;
  }

 private:
  static bool hasOwn(QObject* edit, bool is_undo) {
    if (const auto* line = qobject_cast<QLineEdit*>(edit))
      return is_undo ? line->isUndoAvailable() : line->isRedoAvailable();
    const QTextDocument* text = static_cast<QPlainTextEdit*>(edit)->document();
    return is_undo ? text->isUndoAvailable() : text->isRedoAvailable();
  }
};

class ElidedButton : public QToolButton {
 public:
  ElidedButton() { setProperty("elides", true); }

 protected:
  void paintEvent(QPaintEvent*) override {
    QStylePainter painter(this);
    QStyleOptionToolButton option;
    initStyleOption(&option);
    const int letters = fontMetrics().horizontalAdvance(text());
    const int room = width() - (sizeHint().width() - letters);
    if (letters > room) option.text = fontMetrics().elidedText(text(), Qt::ElideRight, room);
    painter.drawComplexControl(QStyle::CC_ToolButton, option);
  }
  bool event(QEvent* event) override {
    if (event->type() != QEvent::ToolTip || sizeHint().width() <= width())
      return QToolButton::event(event);
    QToolTip::showText(
        static_cast<QHelpEvent*>(event)->globalPos(),
        QStringLiteral("<p><b>%1</b><br>%2</p>").arg(text().toHtmlEscaped(), toolTip()), this);
    return true;
  }
};

void setUp(QToolButton* button, const QString& text, const QString& help, const QString& name) {
  button->setObjectName(name);
  button->setText(text);
  button->setToolTip(help);
  button->setAccessibleDescription(help);
  button->setFocusPolicy(Qt::StrongFocus);
  setKind(button, "pill");
}

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

void passUndoOn(QWidget* edit) { edit->installEventFilter(new UndoGuard(edit)); }

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

/// As wide as its words, which is how it comes: to set that would make its list at once, and a card
/// has dozens.
QComboBox* quietCombo(const QStringList& words) {
  auto* combo = calmed(new QComboBox);
  combo->addItems(words);
  combo->setMinimumContentsLength(6);
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
  setUp(button, text, help, name);
  return button;
}

QToolButton* elidedButton(const QString& text, const QString& help, const QString& name) {
  auto* button = new ElidedButton;
  setUp(button, text, help, name);
  return button;
}

QString wrapped(const QString& text, const QFontMetrics& metrics, int width) {
  QString whole, line;
  for (const QString& word : text.split(' ')) {
    const QString longer = line.isEmpty() ? word : line + ' ' + word;
    if (!line.isEmpty() && metrics.horizontalAdvance(longer) > width) {
      whole += line + '\n';
      line = word;
    } else {
      line = longer;
    }
  }
  return whole + line;
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
