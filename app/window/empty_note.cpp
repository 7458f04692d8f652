#include "app/window/empty_note.h"

#include <QEvent>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>
#include <utility>

#include "app/window/widgets.h"

namespace gazewright {

EmptyNote::EmptyNote(QWidget* view, const QString& title, const QString& line,
                     const QString& button, std::function<QRect()> area)
    : QWidget(view), area_(std::move(area)) {
  auto* head = heading(title);
  head->setAlignment(Qt::AlignCenter);
  auto* text = quietLabel(line);
  text->setAlignment(Qt::AlignCenter);
  text->setWordWrap(true);
  button_ = textButton(button, line);
  auto* layout = new QVBoxLayout(this);
  layout->addStretch();
  layout->addWidget(head);
  layout->addWidget(text);
  layout->addWidget(button_, 0, Qt::AlignHCenter);
  layout->addStretch();
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  view->installEventFilter(this);
  cover(*view);
  hide();
}

void EmptyNote::cover(const QWidget& view) { setGeometry(area_ ? area_() : view.rect()); }

bool EmptyNote::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize) cover(*qobject_cast<QWidget*>(watched));
  return QWidget::eventFilter(watched, event);
}

}  // namespace gazewright
