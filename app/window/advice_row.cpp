#include "app/window/advice_row.h"

#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/plots/charts.h"
#include "app/window/document.h"
#include "app/window/edits.h"
#include "app/window/widgets.h"

namespace gazewright {

AdviceRow::AdviceRow(Document& document, Axis axis, QWidget* parent)
    : CardRow(parent),
      document_(document),
      axis_(axis),
      effect_(sentencesLabel(tr("Gain advice"))),
      reasons_(sentencesLabel(tr("Reasons"))),
      use_(textButton(tr("Use these gains"), tr("Enters all three gains; one step to undo"))),
      fold_(textButton({}, tr("Show or hide the reasons"), QStringLiteral("advice.reasons"))) {
  setObjectName(QString::fromUtf8(name_of(axis)) + QStringLiteral(".loop advice"));
  use_->setEnabled(false);
  connect(use_, &QToolButton::clicked, this, &AdviceRow::use);
  setKind(fold_, "fold");
  connect(fold_, &QToolButton::clicked, this, [this] { fold(reasons_->isHidden()); });
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(heading(tr("Gain advice")));
  layout->addWidget(use_, 0, Qt::AlignLeft);
  layout->addWidget(effect_);
  layout->addWidget(fold_, 0, Qt::AlignLeft);
  layout->addWidget(reasons_);
  fold(false);
  fold_->hide();  // until there is one
}

void AdviceRow::fold(bool open) {
  reasons_->setVisible(open);
  fold_->setText((open ? QStringLiteral("▾ ") : QStringLiteral("▸ ")) + tr("Reasons"));
}

void AdviceRow::showCost(const Analysis& analysis) {
  const GainAdvice& advice = analysis.advice[static_cast<std::size_t>(axis_)];
  use_->setEnabled(!advice.values.empty());
  if (advice.sentences.empty()) return;  // left out in a drag: what stands there comes back
  QStringList lines;
  for (const std::string& sentence : advice.sentences) lines << reason_text(sentence);
  effect_->setText(lines.takeFirst());  // says what the button does to settling
  reasons_->setText(lines.join('\n'));
  fold_->setVisible(!lines.isEmpty());
  if (lines.isEmpty()) fold(false);
  values_ = advice.values;
}

QString AdviceRow::text() const { return effect_->text() + '\n' + reasons_->text(); }

void AdviceRow::use() {
  document_.edit(tr("%1: advised gains").arg(axis_word(axis_)),
                 with_values(document_.rig(), values_));
}

}  // namespace gazewright
