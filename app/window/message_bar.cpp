#include "app/window/message_bar.h"

#include <QAccessible>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QToolButton>
#include <algorithm>
#include <utility>

#include "app/window/widgets.h"

namespace gazewright {
namespace {
constexpr int kLeastLines = 8;
}

QString sentence_of(const Diagnostic& diagnostic) {
  QString text = QString::fromStdString(diagnostic.problem);
  if (!diagnostic.file.empty())
    text = QString::fromStdString(diagnostic.file) + QStringLiteral(": ") + text;
  if (!diagnostic.fix.empty())
    text += QStringLiteral(" – ") + QString::fromStdString(diagnostic.fix);
  return text;
}

MessageBar::MessageBar(QWidget* parent) : QFrame(parent), theme_(theme_for(ThemeKind::light)) {
  setObjectName(QStringLiteral("message bar"));
  heading_ = new QLabel;
  heading_->setWordWrap(true);
  heading_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  list_ = new QPlainTextEdit;
  list_->setObjectName(QStringLiteral("problems"));
  list_->setReadOnly(true);
  list_->setAccessibleName(tr("Problems of the file"));
  list_->setFrameShape(QFrame::NoFrame);
  undo_ = textButton(tr("Undo"), tr("Make it as it was before"), QStringLiteral("notice.undo"));
  connect(undo_, &QToolButton::clicked, this, [this] {
    hide();
    if (const auto take_back = std::exchange(take_back_, {})) take_back();
  });
  close_ = textButton(tr("Close"), tr("Hide this message"));
  connect(close_, &QToolButton::clicked, this, &QWidget::hide);
  auto* top = new QHBoxLayout;
  top->addWidget(heading_, 1);
  top->addWidget(undo_, 0, Qt::AlignTop);
  top->addWidget(close_, 0, Qt::AlignTop);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 5, 6, 5);
  layout->addLayout(top);
  layout->addWidget(list_);
  hide();
}

void MessageBar::showNotice(const QString& text) { present(text, {}, false); }
void MessageBar::showNotice(const QString& text, std::function<void()> undo) {
  present(text, {}, false);
  take_back_ = std::move(undo);
  undo_->show();
}
void MessageBar::withdraw(const QString& notice) {
  if (text() == notice) hide();
}
void MessageBar::showFault(const QString& text) { present(text, {}, true); }

void MessageBar::showProblems(const QString& heading, const std::vector<Diagnostic>& diagnostics) {
  QStringList lines;
  for (const Diagnostic& diagnostic : diagnostics) {
    lines << QString::fromStdString(to_text(diagnostic)).trimmed();
  }
  const bool fault = std::ranges::any_of(diagnostics, [](const Diagnostic& diagnostic) {
    return diagnostic.weight == Diagnostic::Weight::error;
  });
  present(heading, lines.join('\n'), fault);
}

QString MessageBar::text() const {
  if (isHidden()) return {};
  return list_->isHidden() ? heading_->text() : heading_->text() + '\n' + list_->toPlainText();
}

void MessageBar::present(const QString& heading, const QString& list, bool fault) {
  fault_ = fault;
  heading_->setText((fault ? QStringLiteral("✕ ") : QString()) + heading);
  list_->setPlainText(list);
  list_->setVisible(!list.isEmpty());
  take_back_ = {};
  undo_->hide();
  fitList();
  colour();
  show();
  QAccessibleEvent alert(heading_, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

/// As high as its lines, to half of the window; what is wider than the bar scrolls.
void MessageBar::fitList() {
  const int spacing = fontMetrics().lineSpacing();
  const int most = std::max(kLeastLines, window()->height() / 2 / spacing);
  const int lines = std::min(list_->document()->blockCount(), most);
  list_->setFixedHeight(lines * spacing + 12);
}

void MessageBar::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() == QEvent::FontChange && list_) fitList();
}

void MessageBar::setTheme(const Theme& theme) {
  theme_ = theme;
  colour();
}

void MessageBar::colour() {
  const QColor edge = fault_ ? theme_.bad : theme_.control;
  setStyleSheet(QStringLiteral("gazewright--MessageBar { background: %1; border: 1px solid %2; "
                               "border-radius: 6px; }")
                    .arg(theme_.card.name(), edge.name()));
}

}  // namespace gazewright
