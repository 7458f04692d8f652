#include "app/window/guide_strip.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QStyle>
#include <QToolButton>

#include "app/window/widgets.h"

namespace gazewright {

GuideStrip::GuideStrip(QWidget* parent) : QFrame(parent) {
  setKind(this, "card");
  setObjectName(QStringLiteral("first steps"));
  title_ = heading(tr("First steps"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(10, 3, 4, 3);
  row->setSpacing(4);
  row->addWidget(title_);
  for (std::size_t i = 0; i < kGuideSteps; ++i) {
    const auto step = static_cast<GuideStep>(i);
    steps_[i] = textButton({}, step_help(step));
    steps_[i]->setMinimumWidth(24);
    connect(steps_[i], &QToolButton::clicked, this, [this, step] { emit stepChosen(step); });
    row->addWidget(steps_[i]);
  }
  row->addStretch();
  close_ = textButton(QStringLiteral("×"), tr("Put the first steps away; Help brings them back"));
  close_->setAccessibleName(tr("Put the first steps away"));
  setKind(close_, "bare");
  connect(close_, &QToolButton::clicked, this, &GuideStrip::putAway);
  row->addWidget(close_);
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  write();
  hide();
}

void GuideStrip::setState(const GuideState& state) {
  if (state == state_) return;
  state_ = state;
  write();
}

bool GuideStrip::titlesFit() const {
  int wide = title_->sizeHint().width() + 60;
  for (std::size_t i = 0; i < kGuideSteps; ++i) {
    const QString title = step_title(static_cast<GuideStep>(i));
    wide += fontMetrics().horizontalAdvance(title) + fontMetrics().averageCharWidth() * 5 + 26;
  }
  return wide <= width();
}

/// Titles where they fit into the strip's width, else their numbers.
void GuideStrip::write() {
  const bool whole = titlesFit();
  for (std::size_t i = 0; i < kGuideSteps; ++i) {
    const QString title = step_title(static_cast<GuideStep>(i));
    const QString mark = state_.done[i] ? QStringLiteral("✓") : QString::number(i + 1);
    steps_[i]->setText(whole ? mark + QStringLiteral("  ") + title : mark);
    steps_[i]->setAccessibleName(tr("Step %1: %2, %3")
                                     .arg(i + 1)
                                     .arg(title, state_.done[i] ? tr("done") : tr("not done yet")));
    steps_[i]->setToolTip(
        QStringLiteral("<p><b>%1</b><br>%2</p>").arg(title, step_help(static_cast<GuideStep>(i))));
    if (steps_[i]->property("done").toBool() == state_.done[i]) continue;  // resizing is smooth
    steps_[i]->setProperty("done", state_.done[i]);
    steps_[i]->style()->unpolish(steps_[i]);
    steps_[i]->style()->polish(steps_[i]);
  }
}

void GuideStrip::resizeEvent(QResizeEvent* event) {
  QFrame::resizeEvent(event);
  write();
}

bool GuideStrip::event(QEvent* event) {
  if (event->type() == QEvent::FontChange) write();
  return QFrame::event(event);
}

}  // namespace gazewright
