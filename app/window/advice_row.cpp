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
      reasons_(sentencesLabel(tr("Gain advice"))),
      use_(textButton(tr("Use these gains"), tr("Enters all three gains; one step to undo"))) {
  setObjectName(QString::fromUtf8(name_of(axis)) + QStringLiteral(".loop advice"));
  use_->setEnabled(false);
  connect(use_, &QToolButton::clicked, this, &AdviceRow::use);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(heading(tr("Gain advice")));
  layout->addWidget(use_, 0, Qt::AlignLeft);
  layout->addWidget(reasons_);  // the first of them says what the button does to settling
}

void AdviceRow::showCost(const Analysis& analysis) {
  const GainAdvice& advice = analysis.advice[static_cast<std::size_t>(axis_)];
  use_->setEnabled(!advice.values.empty());
  if (advice.sentences.empty()) return;  // left out in a drag: what stands there comes back
  QStringList lines;
  for (const std::string& sentence : advice.sentences) lines << reason_text(sentence);
  reasons_->setText(lines.join('\n'));
  values_ = advice.values;
}

QString AdviceRow::text() const { return reasons_->text(); }

void AdviceRow::use() {
  document_.edit(tr("%1: advised gains").arg(axis_word(axis_)),
                 with_values(document_.rig(), values_));
}

}  // namespace gazewright
