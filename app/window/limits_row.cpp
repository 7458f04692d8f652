#include "app/window/limits_row.h"

#include <QEvent>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/plots/charts.h"
#include "app/window/widgets.h"

namespace gazewright {

LimitsRow::LimitsRow(Axis axis, QWidget* parent)
    : CardRow(parent),
      axis_(axis),
      text_(sentencesLabel(tr("What limits the move"))),
      layout_(new QVBoxLayout(this)) {
  setObjectName(QString::fromUtf8(name_of(axis)) + QStringLiteral(".limits"));
  layout_->setContentsMargins(0, 0, 0, 0);
  layout_->addWidget(heading(tr("What limits the move")));
  layout_->addWidget(text_);
}

void LimitsRow::showCost(const Analysis& analysis) {
  const MoveLimits& limits = analysis.limits_of(axis_);
  QStringList lines;
  for (const std::string& line : {limits.sentence, limits.fastest}) {
    if (line.empty()) continue;
    QString text = reason_text(line);
    text[0] = text[0].toUpper();
    lines << text + QChar('.');
  }
  text_->setText(lines.join('\n'));
  std::vector<std::string> texts;
  for (const LimitGain& gain : limits.gains) texts.push_back(gain.text());
  if (texts == shown_) return;  // a button keeps its focus
  shown_ = std::move(texts);
  for (QToolButton* button : buttons_) {
    button->hide();
    button->deleteLater();  // it may be what caused this
  }
  buttons_.clear();
  changes_.clear();
  for (const LimitGain& gain : limits.gains) addButton(gain);
  wrapButtons();
}

void LimitsRow::addButton(const LimitGain& gain) {
  const QString reason = QString::fromStdString(gain.reason);
  const QString change = QString::fromStdString(gain.change);
  QToolButton* button = textButton(change, tr("%1. Press to apply it.").arg(reason));
  button->setAccessibleName(QString::fromStdString(gain.text()));
  button->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  const Remedy remedy{gain.change, gain.path, gain.value_si};
  connect(button, &QToolButton::clicked, this, [this, remedy] { emit remedyChosen(remedy); });
  layout_->addWidget(button);
  buttons_.push_back(button);
  changes_ << change;
}

/// The sentences of the buttons in as many lines as they need.
void LimitsRow::wrapButtons() {
  constexpr int kFrame_px = 24;
  for (std::size_t i = 0; i < buttons_.size(); ++i)
    buttons_[i]->setText(
        wrapped(changes_[i], buttons_[i]->fontMetrics(), std::max(width() - kFrame_px, 40)));
}

void LimitsRow::resizeEvent(QResizeEvent* event) {
  CardRow::resizeEvent(event);
  wrapButtons();
}

void LimitsRow::changeEvent(QEvent* event) {
  CardRow::changeEvent(event);
  if (event->type() == QEvent::FontChange) wrapButtons();
}

QString LimitsRow::text() const { return text_->text(); }

}  // namespace gazewright
